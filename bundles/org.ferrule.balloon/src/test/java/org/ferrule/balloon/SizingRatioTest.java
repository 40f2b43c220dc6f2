/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.balloon.SizingRatio.Standing;
import org.ferrule.balloon.SizingRule.SizedDevice;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Against {@code shared/sizing-ratios.csv}, each row with its source. */
class SizingRatioTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/sizing-ratios.csv", numLinesToSkip = 1)
    void standsBesideTheRuleAsItsSourceSays(String id, SizingRule rule, String deviceMm, String vesselMm,
            Standing standing) {
        assertEquals(standing, new SizingRatio(mm(deviceMm), mm(vesselMm)).beside(rule), id);
    }

    @Test
    void rulesThatDisagreeStandSideBySide() {
        SizingRatio ratio = new SizingRatio(mm("1.75"), mm("2.65"));
        assertEquals(Standing.ABOVE, ratio.beside(SizingRule.BURR_CONSENSUS));
        assertEquals(Standing.WITHIN, ratio.beside(SizingRule.BURR_TRIALS));
        assertEquals(0.66038, ratio.value(), 5e-6);
    }

    /** In floating point 1.8 / 3 is a little more than 0.6 times 3 is. */
    @Test
    void endsOfABandBelongToItExactly() {
        assertEquals(Standing.WITHIN, new SizingRatio(mm("1.8"), mm("3")).beside(SizingRule.BURR_CONSENSUS));
        assertEquals(Standing.WITHIN, new SizingRatio(mm("1.2"), mm("3")).beside(SizingRule.BURR_TARGET));
        assertEquals(Standing.ABOVE, new SizingRatio(mm("1.800001"), mm("3")).beside(SizingRule.BURR_CONSENSUS));
        assertEquals(Standing.BELOW, new SizingRatio(mm("1.199999"), mm("3")).beside(SizingRule.BURR_TARGET));
    }

    @ParameterizedTest
    @EnumSource
    void everyRuleHasABandAndASource(SizingRule rule) {
        assertTrue(rule.low().isPresent() || rule.high().isPresent());
        assertTrue(!rule.source().isBlank() && !rule.mark().isBlank());
        assertTrue(SizingRule.of(rule.device()).contains(rule));
    }

    @Test
    void rulesForBurrsAreNotForBalloons() {
        assertEquals(3, SizingRule.of(SizedDevice.BURR).size());
        assertEquals(3, SizingRule.of(SizedDevice.BALLOON).size());
    }

    @Test
    void refusesWhatIsNoRatio() {
        assertThrows(IllegalArgumentException.class, () -> new SizingRatio(mm("-1"), mm("3")));
        Exception refused = assertThrows(IllegalArgumentException.class, () -> new SizingRatio(mm("1"), Length.ZERO));
        assertTrue(refused.getMessage().contains("1 mm to 0 mm"), refused::getMessage);
    }

    /** 18 % less and divided by 1.14, as the published series can be read (Hehrlein et al. 2001). */
    @Test
    void inVivoBandIsRoundedOutward() {
        assertEquals(new InVivoBand(mm("2.46"), new Length(7_894_737)), InVivoBand.of(mm("3")));
        assertEquals(new InVivoBand(new Length(0), new Length(1)), InVivoBand.of(new Length(1)));
        assertThrows(IllegalArgumentException.class, () -> InVivoBand.of(mm("-1")));
    }

    private static Length mm(String decimal) {
        return Length.of(decimal, LengthUnit.MILLIMETRE);
    }
}
