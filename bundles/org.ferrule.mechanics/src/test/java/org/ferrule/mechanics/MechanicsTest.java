/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.mechanics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against {@code shared/mechanics.csv}, to the last digit that stands there but one unit of it. */
class MechanicsTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/mechanics.csv", numLinesToSkip = 1)
    void agreesWithTable(String id, String quantity, String inputs, BigDecimal expected) {
        double[] in = Arrays.stream(inputs.split(" ")).mapToDouble(Double::parseDouble).toArray();
        assertEquals(expected.doubleValue(), actual(quantity, in), expected.ulp().doubleValue(), id);
    }

    private static double actual(String quantity, double... in) {
        return switch (quantity) {
            case "capstan ratio" -> Capstan.ratio(in[0], Math.toRadians(in[1]));
            case "capstan arriving" -> Capstan.arriving(in[0], Math.toRadians(in[1]));
            case "stiffness" -> new TubeSection(in[1], in[2]).stiffnessNmm2(in[0]);
            case "weight" -> new TubeSection(in[1], in[2]).weightNPerMm(in[0]);
            case "thin hoop" -> HoopStress.thinMPa(in[0], in[1], in[2]);
            case "thick hoop" -> HoopStress.thickMPa(in[0], in[1], in[2]);
            case "tension" -> HoopStress.tensionNPerMm(in[0], in[1]);
            default -> quantity.startsWith("column")
                    ? ColumnEnds.valueOf(quantity.substring(7)).bucklingForceN(in[0], in[1])
                    : inLumen(quantity, new LumenBuckling(in[0], in[1]), in);
        };
    }

    private static double inLumen(String quantity, LumenBuckling shaft, double... in) {
        return switch (quantity) {
            case "sinusoidal straight" -> shaft.sinusoidalInStraightN(in[2], Math.toRadians(in[3]));
            case "helical straight" -> shaft.helicalInStraightN(in[2], Math.toRadians(in[3]));
            case "sinusoidal bend" -> shaft.sinusoidalInBendN(in[2]);
            case "helical bend" -> shaft.helicalInBendN(in[2]);
            case "pitch" -> shaft.helixPitchMm(in[2]);
            case "wall force" -> shaft.wallForceNPerMm(in[2]);
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    @Test
    void rodIsATubeWithoutALumen() {
        assertEquals(new TubeSection(0.3556, 0), TubeSection.rod(0.3556));
        assertEquals(Math.PI, TubeSection.rod(2).areaMm2(), 1e-15);
        assertEquals(Math.PI * 3 / 4, new TubeSection(2, 1).areaMm2(), 1e-15);
    }

    @Test
    void onlyTheWeightAcrossAnInclinedLumenHoldsTheShaftDown() {
        LumenBuckling shaft = new LumenBuckling(151.49, 0.7112);
        assertEquals(shaft.sinusoidalInStraightN(7.694e-6, Math.PI / 2) / Math.sqrt(2),
                shaft.sinusoidalInStraightN(7.694e-6, Math.PI / 6), 1e-12);
    }

    @Test
    void endsHeldTighterCountAsAShorterColumn() {
        assertArrayEquals(new double[] { 1, 0.5, 2 },
                Arrays.stream(ColumnEnds.values()).mapToDouble(ColumnEnds::lengthFactor).toArray());
    }

    @Test
    void everyBendTakesItsShare() {
        double[] shares = Capstan.arrivingAlong(0.2, Math.PI / 2, 0, Math.PI / 2);
        assertArrayEquals(new double[] { Math.sqrt(0.533488), Math.sqrt(0.533488), 0.533488 }, shares, 1e-6);
    }

    @Test
    void stepsOverAFactorOfThreeArePointedOut() {
        assertEquals(List.of(0, 3), StiffnessStep.cliffs(100, 31, 93, 60, 181, 182));
        assertEquals(List.of(), StiffnessStep.cliffs(90, 30));
        assertEquals(List.of(), StiffnessStep.cliffs());
        assertEquals(4, StiffnessStep.ratio(1, 4));
        assertEquals(4, StiffnessStep.ratio(4, 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = { 0, -1, Double.NaN, Double.POSITIVE_INFINITY })
    void namesWhatMustBeAboveZero(double bad) {
        LumenBuckling shaft = new LumenBuckling(1, 1);
        TubeSection tube = TubeSection.rod(1);
        assertNames("outer diameter in mm " + bad, () -> TubeSection.rod(bad));
        assertNames("modulus in MPa " + bad, () -> tube.stiffnessNmm2(bad));
        assertNames("density in kg/m3 " + bad, () -> tube.weightNPerMm(bad));
        assertNames("length in mm " + bad, () -> ColumnEnds.FIXED.bucklingForceN(1, bad));
        assertNames("stiffness in N mm2 " + bad, () -> ColumnEnds.FIXED.bucklingForceN(bad, 1));
        assertNames("stiffness in N mm2 " + bad, () -> new LumenBuckling(bad, 1));
        assertNames("radial clearance in mm " + bad, () -> new LumenBuckling(1, bad));
        assertNames("weight in N/mm " + bad, () -> shaft.sinusoidalInStraightN(bad, 1));
        assertNames("angle in rad " + bad, () -> shaft.sinusoidalInStraightN(1, bad));
        assertNames("radius in mm " + bad, () -> shaft.sinusoidalInBendN(bad));
        assertNames("force in N " + bad, () -> shaft.helixPitchMm(bad));
        assertNames("wall in mm " + bad, () -> HoopStress.thinMPa(1, 1, bad));
        assertNames("wall in mm " + bad, () -> HoopStress.thickMPa(1, 1, bad));
        assertNames("radius in mm " + bad, () -> HoopStress.thickMPa(1, bad, 1));
        assertNames("radius in mm " + bad, () -> HoopStress.tensionNPerMm(1, bad));
        assertNames("stiffness in N mm2 " + bad, () -> StiffnessStep.ratio(bad, 1));
        assertNames("stiffness in N mm2 " + bad, () -> StiffnessStep.ratio(1, bad));
    }

    @ParameterizedTest
    @ValueSource(doubles = { -1e-9, Double.NaN, Double.POSITIVE_INFINITY })
    void namesWhatMustNotBeNegative(double bad) {
        assertNames("friction " + bad, () -> Capstan.ratio(bad, 1));
        assertNames("angle in rad " + bad, () -> Capstan.ratio(0.1, bad));
        assertNames("angle in rad " + bad, () -> Capstan.arrivingAlong(0.1, 2, bad));
        assertNames("force in N " + bad, () -> new LumenBuckling(1, 1).wallForceNPerMm(bad));
        assertNames("pressure in MPa " + bad, () -> HoopStress.thickMPa(bad, 1, 1));
        assertNames("pressure in MPa " + bad, () -> HoopStress.tensionNPerMm(bad, 1));
        assertNames("inner diameter in mm " + bad, () -> new TubeSection(1, bad));
    }

    @Test
    void allowsTheEndsOfTheRanges() {
        assertEquals(1, Capstan.ratio(0, 0));
        assertEquals(0, new LumenBuckling(1, 1).wallForceNPerMm(0));
        assertEquals(0, HoopStress.thickMPa(0, 1, 1));
        assertEquals(0, HoopStress.tensionNPerMm(0, 1));
        assertNames("inner diameter in mm 1.0", () -> new TubeSection(1, 1));
        assertNames("angle in rad 1.6", () -> new LumenBuckling(1, 1).sinusoidalInStraightN(1, 1.6));
    }

    private static void assertNames(String figure, Runnable refused) {
        Exception exception = assertThrows(IllegalArgumentException.class, refused::run);
        assertTrue(exception.getMessage().startsWith(figure + ": must be "), exception::getMessage);
    }
}
