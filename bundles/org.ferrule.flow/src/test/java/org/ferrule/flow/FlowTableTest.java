/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Flow agrees with the values in {@code shared/flow.csv}, each with its source, in every digit that stands there. */
class FlowTableTest {
    private static final List<String> MARKS = List.of("seen", "library", "computed", "from memory", "common practice");
    private static final double PA_PER_ATM = 101_325;

    /** The named inputs of a row. */
    private static final class Inputs {
        private final Map<String, String> values = new HashMap<>();

        Inputs(String text) {
            Arrays.stream(text.split(" ")).map(pair -> pair.split("=")).forEach(pair -> values.put(pair[0], pair[1]));
        }

        double number(String name) {
            return Double.parseDouble(values.get(name));
        }

        Length lumen() {
            return length(values.get("lumen"));
        }

        List<Length> devices() {
            return Arrays.stream(values.get("devices").split("[+]")).map(Inputs::length).toList();
        }

        private static Length length(String text) {
            return Dimension.parse(text).label();
        }

        double pressureDrop() {
            return Poiseuille.pressureDropPa(number("viscosity"), number("length"), number("flow"), number("diameter"));
        }

        double reynolds() {
            return Poiseuille.reynolds(number("density"), number("viscosity"), number("flow"), number("diameter"));
        }

        double share() {
            return Annulus.eccentric(number("ratio"), number("eccentricity"));
        }

        double[] interval() {
            OpenFraction fraction = LumenFlow.interval(lumen(), devices());
            return new double[] { fraction.low(), fraction.high() };
        }

        double inTheCentre() {
            return LumenFlow.at(lumen(), EnclosingCircle.discs(devices()).discs());
        }
    }

    @TestFactory
    Stream<DynamicTest> agreesWithTable() throws IOException {
        return SharedTable.rows("flow.csv").stream()
                .map(row -> DynamicTest.dynamicTest(row.get("id"), () -> check(row)));
    }

    private static void check(CSVRecord row) {
        double[] actual = compute(row.get("quantity"), new Inputs(row.get("inputs")));
        String[] expected = row.get("expected").split(" ");
        assertEquals(expected.length, actual.length);
        for (int i = 0; i < actual.length; i++) {
            BigDecimal value = new BigDecimal(expected[i]);
            assertEquals(value.doubleValue(), actual[i], Math.pow(10, -value.scale()) / 2);
        }
    }

    private static double[] compute(String quantity, Inputs inputs) {
        return switch (quantity) {
            case "pressure drop in Pa" -> new double[] { inputs.pressureDrop() };
            case "pressure drop in atm" -> new double[] { inputs.pressureDrop() / PA_PER_ATM };
            case "Reynolds number" -> new double[] { inputs.reynolds() };
            case "share" -> new double[] { inputs.share() };
            case "times concentric" -> new double[] { inputs.share() / Annulus.concentric(inputs.number("ratio")) };
            case "interval" -> inputs.interval();
            case "side by side in the centre" -> new double[] { inputs.inTheCentre() };
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    @Test
    void namesSourceAndMarkOfEveryValue() throws IOException {
        for (CSVRecord row : SharedTable.rows("flow.csv")) {
            assertFalse(row.get("source").isBlank(), row.get("id"));
            assertTrue(MARKS.contains(row.get("mark")), row.get("id"));
        }
    }
}
