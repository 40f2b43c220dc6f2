/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Pressure;

/** Conversions of lengths, pressures and areas of discs. */
final class UnitTable implements TableCheck {
    private static final int DECIMALS = 12;

    @Override
    public Optional<CheckResult> check(CheckRow row) {
        String input = row.get("input") + " " + row.get("unit");
        BigDecimal expected = new BigDecimal(row.get("expected"));
        boolean cut = row.get("quantity").endsWith("(last digit cut off)");
        BigDecimal computed = computed(row.get("quantity"), input, row.get("expectedUnit"))
                .setScale(expected.scale(), cut ? RoundingMode.DOWN : RoundingMode.HALF_EVEN);
        return Optional.of(CheckResult.of(row, row.get("quantity") + " " + input + " in " + row.get("expectedUnit"),
                Comparison.same(expected.toPlainString(), computed.toPlainString())));
    }

    private static BigDecimal computed(String quantity, String input, String unit) {
        return switch (quantity) {
            case "pressure" -> BigDecimal.valueOf(Pressure.parse(input).in(Pressure.parse("1 " + unit).unit()));
            case "disc area" -> discArea(Dimension.parse(input).label().in(LengthUnit.MILLIMETRE));
            default -> Dimension.parse(input).label().in(Dimension.parse("1 " + unit).unit(), DECIMALS,
                    RoundingMode.HALF_EVEN);
        };
    }

    private static BigDecimal discArea(double diameterMm) {
        return BigDecimal.valueOf(Math.PI / 4 * diameterMm * diameterMm);
    }
}
