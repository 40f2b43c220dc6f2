/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.math.BigDecimal;
import java.math.MathContext;
import org.fhir.ucum.Decimal;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units agree with an outside oracle: UCUM essence 2.2, as it stands in the library org.fhir:ucum 1.0.10. */
class UcumOracleTest {
    private static final UcumEssenceService UCUM = ucum();

    private static UcumEssenceService ucum() {
        try {
            return new UcumEssenceService(UcumEssenceService.class.getResourceAsStream("/ucum-essence.xml"));
        } catch (UcumException e) {
            throw new IllegalStateException(e);
        }
    }

    private static BigDecimal convert(String value, String from, String to) throws UcumException {
        return new BigDecimal(UCUM.convert(new Decimal(value, 40), from, to).asDecimal());
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void lengthUnitHasUcumSize(LengthUnit unit) throws UcumException {
        assertEquals(Length.of(convert("1", unit.ucum(), "mm"), LengthUnit.MILLIMETRE),
                new Length(unit.thirdNanometres()));
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void lengthConvertsLikeUcum(LengthUnit unit) throws UcumException {
        for (LengthUnit target : LengthUnit.values()) {
            // Ratio of sizes in mm, because the library rounds a result in inches to three digits.
            double expected = 2.7 * convert("1", unit.ucum(), "mm").doubleValue()
                    / convert("1", target.ucum(), "mm").doubleValue();
            assertEquals(expected, Length.of("2.7", unit).in(target), 1e-15 * expected, target.symbol());
        }
    }

    // The library rounds results to the digits of its factors: seven for the psi.
    @ParameterizedTest
    @CsvSource({ "ATMOSPHERE, 0", "BAR, 0", "KILOPASCAL, 0", "MEGAPASCAL, 0", "PSI, 1e-7" })
    void pressureUnitHasUcumSize(PressureUnit unit, double tolerance) throws UcumException {
        BigDecimal expected = convert("1", unit.ucum(), "Pa");
        BigDecimal deviation = expected.divide(unit.pascals(), MathContext.DECIMAL128).subtract(BigDecimal.ONE);
        assertEquals(0, deviation.doubleValue(), tolerance);
    }

    @Test
    void millimetreOfMercuryIsTheConventionalOne() throws UcumException {
        // UCUM rounds it to 133.322 Pa; with the conventional one 760 mmHg are 1 atm within 2e-7.
        assertEquals(1, PressureUnit.MILLIMETRE_OF_MERCURY.pascals().doubleValue()
                / convert("1", "mm[Hg]", "Pa").doubleValue(), 4e-6);
        assertEquals(1, Pressure.parse("760 mmHg").in(PressureUnit.ATMOSPHERE), 2e-7);
    }

    @Test
    void atmosphereIsExact() {
        assertEquals(new BigDecimal("101325"), Pressure.parse("1 atm").pascals());
    }

    @ParameterizedTest
    @ValueSource(strings = { "k[Ch]", "katm", "m[in_i]", "k[psi]" })
    void clinicalUnitsTakeNoPrefix(String code) {
        assertNotNull(UCUM.validate(code));
    }

    @ParameterizedTest
    @EnumSource(PressureUnit.class)
    void pressureCodeIsValid(PressureUnit unit) {
        assertNull(UCUM.validate(unit.ucum()));
    }
}
