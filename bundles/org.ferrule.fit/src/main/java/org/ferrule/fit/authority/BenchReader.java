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
        return new Statements(results.stream().filter(r -> speaksOf(r, question, phase)).map(BenchReader::statement)
                .toList());
    }

    private static boolean speaksOf(BenchResult result, FitQuestion question, Phase phase) {
        return result.outer().equals(question.outer().device().id())
                && result.inner().equals(question.inner().device().id())
                && (result.lumen().isEmpty() || result.lumen().equals(question.lumen().name()))
                && Scope.holds(result.passed(), result.covers(), result.wire(), question, phase);
    }

    private static Statement statement(BenchResult result) {
        ReasonCode code = result.passed() ? ReasonCode.BENCH_PASSED : ReasonCode.BENCH_DID_NOT_PASS;
        return new Statement(result.passed(),
                Reason.of(code, Reason.count(result.samples()), Reason.source(result.source())), result.source());
    }
}
