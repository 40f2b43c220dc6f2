/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.statistics.ToleranceStack;
import org.ferrule.statistics.ToleranceStack.Contributor;

/** Tolerance stacks: nominal gap, worst case, root sum square. */
final class StackTable implements TableCheck {

    @Override
    public Optional<CheckResult> check(CheckRow row) {
        LengthUnit unit = Dimension.parse("1 " + row.get("unit")).unit();
        ToleranceStack stack = new ToleranceStack(
                Stream.of(row.get("contributors").split("; ")).map(text -> contributor(text, unit)).toList());
        Comparison comparison = compared(row, "nominal", stack.nominal(), unit)
                .and(compared(row, "worstLow", stack.worstCase().low(), unit))
                .and(compared(row, "worstHigh", stack.worstCase().high(), unit))
                .and(compared(row, "rssLow", stack.rootSumSquare().low(), unit))
                .and(compared(row, "rssHigh", stack.rootSumSquare().high(), unit));
        return Optional.of(CheckResult.of(row, row.get("contributors") + " " + row.get("unit"), comparison));
    }

    private static Contributor contributor(String text, LengthUnit unit) {
        String[] words = text.split(" ");
        return new Contributor(Length.of(words[0].substring(1), unit), Length.of(words[1], unit),
                Length.of(words[2], unit), text.startsWith("+"));
    }

    private static Comparison compared(CheckRow row, String column, Length computed, LengthUnit unit) {
        return Comparison.toLastDigit(row.get(column), computed.in(unit));
    }
}
