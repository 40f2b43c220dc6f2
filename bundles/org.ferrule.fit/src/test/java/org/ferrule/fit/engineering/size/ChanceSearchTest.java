/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceSearchTest {

    private static FitQuestion question(SampleDevice inner, String lumen) {
        return passage(inner, guide("g", lumen)).under(TestRules.usual()).question();
    }

    private static SampleDevice rodOf(String diameter) {
        return rod("rod", DeviceKind.MICROCATHETER, "135 cm", diameter);
    }

    private static ChanceSize shaft(FitQuestion question, int section, double target) {
        return ChanceSearch.of(MovableSection.of(new Place.Shaft(question.inner().device(), section)), question,
                target);
    }

    /** Phi(-3.0902) = 0.001 (standard normal table): 1.778 - 3.0902 x 0.005 mm, sd 0.003 and 0.004 mm. */
    @Test
    void leavesAsManyStandardDeviationsAsTheTargetAsksFor() {
        ChanceSize size = shaft(question(rodOf("1 mm sd 0.003"), "1.778 mm sd 0.004 n 20"), 0, 0.001);
        assertEquals(1.778 - 3.0902 * 0.005, size.size().distal().mm(), 1e-6);
        assertTrue(size.chance() <= 0.001);
    }

    /**
     * Stress-strength form, computed: means 0.0508 mm apart with standard deviations of 0.002/3 and 0.001/3 in give
     * 0.003645; a guide of 1.778 mm and an extension of 1.70 mm, 0.010 mm each, give 1.7e-8.
     */
    @ParameterizedTest
    @CsvSource({ "0.0169333333, 0.0084666667, 1.7272, 0.003645", "0.010, 0.010, 1.70, 1.7e-8" })
    void givesBackTheDiameterOfAPublishedChance(String lumenSd, String deviceSd, double expectedMm, double target) {
        ChanceSize size = shaft(question(rodOf("1 mm sd " + deviceSd), "1.778 mm sd " + lumenSd), 0, target);
        assertEquals(expectedMm, size.size().distal().mm(), 1e-4);
    }

    @Test
    void aLumenMustBeAsMuchWider() {
        FitQuestion question = question(rodOf("1.7 mm sd 0.003"), "2 mm sd 0.004");
        ChanceSize size = ChanceSearch.of(
                MovableSection.of(new Place.Bore(question.outer().device(), question.lumen(), 0)), question, 0.001);
        assertEquals(1.7 + 3.0902 * 0.005, size.size().distal().mm(), 1e-6);
    }

    @Test
    void addsUpTheChancesOfSeveralPlaces() {
        FitQuestion two = passage(rodOf("1 mm sd 0.003"), SampleDevice.device("g", DeviceKind.GUIDE_CATHETER)
                .length("100 cm").working("50 cm", "1.778 mm sd 0.004").bore("50 cm", "100 cm", "1.778 mm sd 0.0040"))
                .question();
        ChanceSize size = shaft(two, 0, 0.002);
        assertEquals(1.778 - 3.0902 * 0.005, size.size().distal().mm(), 1e-6, "half of the target at each of both");
        assertEquals(2, size.places());
    }

    @Test
    void refusesWhereAStandardDeviationIsMissing() {
        assertRefused("\"1 mm max\"", question(rodOf("1 mm max"), "1.778 mm sd 0.004"));
        assertRefused("\"1.778 mm ±0.01\"", question(rodOf("1 mm sd 0.003"), "1.778 mm ±0.01"));
        assertRefused("not stated", question(rodOf("1 mm sd 0.003"), "?"));
    }

    private static void assertRefused(String why, FitQuestion question) {
        Exception refused = assertThrows(NoChanceException.class, () -> shaft(question, 0, 0.001));
        assertTrue(refused.getMessage().contains(why), refused.getMessage());
    }

    @Test
    void refusesAShaftWithAWireBeside() {
        FitQuestion question = question(balloon("b", "0.8 mm", "0.6 mm sd 0.01"), "1.778 mm sd 0.004");
        assertThrows(NoChanceException.class, () -> shaft(question, 3, 0.001));
    }

    @Test
    void refusesATargetThatIsNoChance() {
        FitQuestion question = question(rodOf("1 mm sd 0.003"), "1.778 mm sd 0.004");
        assertThrows(IllegalArgumentException.class, () -> shaft(question, 0, 0));
    }
}
