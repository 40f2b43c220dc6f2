/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * Reads what was seen on a bench for a pair; a pass holds for the wire that was used or a thinner one, and for none when
 * the wire is not known.
 */
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
                && result.covers().contains(phase) && holdsForWire(result, question);
    }

    private static boolean holdsForWire(BenchResult result, FitQuestion question) {
        Optional<Length> wire = question.inner().wire().label();
        if (result.wire().isEmpty() || wire.isEmpty()) {
            return true;
        }
        Dimension tried = result.wire().get();
        if (!tried.readable()) {
            return !result.passed();
        }
        int order = wire.get().compareTo(tried.label());
        return result.passed() ? order <= 0 : order >= 0;
    }

    private static Statement statement(BenchResult result) {
        ReasonCode code = result.passed() ? ReasonCode.BENCH_PASSED : ReasonCode.BENCH_DID_NOT_PASS;
        return new Statement(result.passed(),
                Reason.of(code, Reason.count(result.samples()), Reason.source(result.source())), result.source());
    }
}
