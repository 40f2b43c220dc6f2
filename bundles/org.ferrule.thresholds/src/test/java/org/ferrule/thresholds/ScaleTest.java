/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;

import org.ferrule.thresholds.dose.DoseQuantity;
import org.ferrule.thresholds.renal.ContrastLimit;
import org.ferrule.thresholds.renal.RenalFigure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers with units as people type them, and what is refused. */
class ScaleTest {

    @ParameterizedTest
    @CsvSource({ "1.5mg/dL, 1.5", "1.5 mg/dl, 1.5", "132.6 umol/L, 1.5", "132.6 \u00b5mol/l, 1.5",
        "132.6\u03bcmol/L, 1.5", " .9 mg/dL , 0.9", "0.2 mg/dL, 0.2", "20 mg/dL, 20" })
    void readsCreatinineInBothUnits(String text, BigDecimal mgPerDl) {
        assertEquals(0, mgPerDl.compareTo(RenalFigure.CREATININE.scale().read(text)), text);
    }

    /** 1 lb = 0.45359237 kg, by definition. */
    @Test
    void readsPounds() {
        assertEquals(new BigDecimal("79.83225712"), RenalFigure.WEIGHT.scale().read("176 lb"));
    }

    @ParameterizedTest
    @CsvSource({ "KERMA_AREA, 320 Gy.cm2, 320", "KERMA_AREA, 320 Gycm\u00b2, 320", "KERMA_AREA, 320 Gy*cm2, 320",
        "KERMA_AREA, 320 Gy cm^2, 320", "KERMA_AREA, 32000 cGy.cm2, 320", "KERMA_AREA, 32000 uGy.m2, 320",
        "KERMA_AREA, 320000 mGy.cm2, 320", "AIR_KERMA, 4200 mGy, 4.2", "FLUOROSCOPY, 1.5 h, 90",
        "FLUOROSCOPY, 90s, 1.5" })
    void readsDoses(DoseQuantity quantity, String text, BigDecimal value) {
        assertEquals(0, value.compareTo(quantity.scale().read(text)), text);
    }

    @Test
    void namesTheImplausibleValueAndTheUnitThatWasPerhapsMeant() {
        assertEquals("88 mg/dL is no plausible serum creatinine (0.2 to 20 mg/dL); 88 umol/L would be 0.995 mg/dL",
                refusal(RenalFigure.CREATININE.scale(), "88 mg/dL"));
        assertEquals("1.5 umol/L is no plausible serum creatinine (0.2 to 20 mg/dL); 1.5 mg/dL would be 1.5 mg/dL",
                refusal(RenalFigure.CREATININE.scale(), "1.5 umol/L"));
        assertEquals("4200 Gy is no plausible air kerma (0 to 50 Gy); 4200 mGy would be 4.2 Gy",
                refusal(DoseQuantity.AIR_KERMA.scale(), "4200 Gy"));
        assertEquals("9000 kg is no plausible body weight (25 to 300 kg)",
                refusal(RenalFigure.WEIGHT.scale(), "9000 kg"));
        assertEquals("24.9 kg is no plausible body weight (25 to 300 kg)", assertThrows(IllegalArgumentException.class,
                () -> RenalFigure.WEIGHT.scale().check(new BigDecimal("24.9"))).getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = { "1.5; must have a unit (mg/dL, umol/L)", "1.5 mmol/L; must have a unit",
        "1,5 mg/dL; must have a unit", "-1 mg/dL; a number with a decimal point", "mg/dL; a number with",
        "1.5 mg/DL; must have a unit", "1e1 mg/dL; must have a unit", "12345678901 mg/dL; must have a unit" })
    void neverGuesses(String text, String problem) {
        String message = refusal(RenalFigure.CREATININE.scale(), text);
        assertTrue(message.contains(problem), message);
    }

    @Test
    void nothingIsPlausibleForADoseSoFar() {
        assertEquals(0, DoseQuantity.AIR_KERMA.scale().read("0 Gy").signum());
        assertEquals(0, ContrastLimit.VOLUME.read("0 ml").signum());
    }

    private static String refusal(Scale scale, String text) {
        return assertThrows(IllegalArgumentException.class, () -> scale.read(text)).getMessage();
    }
}
