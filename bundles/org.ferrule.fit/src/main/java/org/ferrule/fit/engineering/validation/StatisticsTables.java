/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.Arrays;
import java.util.Optional;

import org.ferrule.statistics.Interference;
import org.ferrule.statistics.SampleSize;
import org.ferrule.statistics.ToleranceFactor;

/** Tolerance factors, sample sizes and chances of interference. */
final class StatisticsTables {
    private StatisticsTables() {
    }

    static Optional<CheckResult> oneSided(CheckRow row) {
        return Optional.of(CheckResult.of(row, sample(row), Comparison.toLastDigit(row.get("factor"),
                ToleranceFactor.oneSided(n(row), row.number("confidence"), row.number("coverage")))));
    }

    static Optional<CheckResult> twoSided(CheckRow row) {
        return Optional.of(CheckResult.of(row, sample(row), Comparison.toLastDigit(row.get("factor"),
                ToleranceFactor.twoSided(n(row), row.number("confidence"), row.number("coverage")))));
    }

    private static int n(CheckRow row) {
        return Integer.parseInt(row.get("n"));
    }

    private static String sample(CheckRow row) {
        return "n " + row.get("n") + ", confidence " + row.get("confidence") + ", coverage " + row.get("coverage");
    }

    static Optional<CheckResult> zeroFailures(CheckRow row) {
        int computed = SampleSize.zeroFailures(row.number("confidence"), row.number("coverage"));
        return Optional.of(CheckResult.of(row,
                "no failure, confidence " + row.get("confidence") + ", coverage " + row.get("coverage"),
                Comparison.same(row.get("n"), String.valueOf(computed))));
    }

    static Optional<CheckResult> interference(CheckRow row) {
        double sdMm = Interference.combined(
                Arrays.stream(row.get("deviationsMm").split(" ")).mapToDouble(Double::parseDouble).toArray());
        return Optional.of(CheckResult.of(row,
                "mean " + row.get("meanMm") + " mm, standard deviations " + row.get("deviationsMm") + " mm",
                Comparison.toLastDigit(row.get("probability"),
                        Interference.probability(row.number("meanMm"), sdMm))));
    }
}
