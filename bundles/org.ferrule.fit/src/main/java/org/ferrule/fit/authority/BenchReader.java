/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.List;

import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;

/** Reads what was seen on a bench for a pair. */
final class BenchReader {
    private BenchReader() {
    }

    static Statements read(List<BenchResult> results, FitQuestion question, Phase phase) {
        if (results.isEmpty()) {
            return Statements.NONE;
        }
        return new Statements(Surrounding.of(question).stream()
                .flatMap(s -> results.stream().filter(r -> speaksOf(r, question, s, new Scope(question, phase, s))))
                .map(BenchReader::statement).toList());
    }

    /** What was tried was a device alone. */
    private static boolean speaksOf(BenchResult result, FitQuestion question, Surrounding surrounding, Scope scope) {
        return result.outer().equals(surrounding.device().id())
                && result.inner().equals(question.inner().device().id())
                && (result.lumen().isEmpty() || result.lumen().equals(surrounding.lumen().name()))
                && scope.holds(result.passed(), result.covers(), result.wire(), false);
    }

    private static Statement statement(BenchResult result) {
        ReasonCode code = result.passed() ? ReasonCode.BENCH_PASSED : ReasonCode.BENCH_DID_NOT_PASS;
        return new Statement(result.passed(),
                Reason.of(code, Reason.count(result.samples()), Reason.source(result.source())), result.source());
    }
}
