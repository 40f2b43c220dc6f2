/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

import org.ferrule.calc.result.Basis;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.DetailValue;
import org.ferrule.calc.result.Interval;
import org.ferrule.calc.result.Rounded;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What answers hold, and that they are never rounded to the better side. */
class AnswerTest {

    @Test
    void positionsLieInTheLumenInTheOrderGiven() {
        Calculation answer = Given.answer("pack", "device: 1 mm | device: 2 mm | device: 1.5 mm");
        double radius = answer.value().orElseThrow().doubleValue() / 2;
        List<DetailValue> positions = items(answer, "positions");
        assertEquals(3, positions.size());
        assertEquals(2, number(positions.get(1), 2));
        positions.forEach(position -> assertTrue(Math.hypot(number(position, 0), number(position, 1))
                + number(position, 2) / 2 <= radius + 1e-5));
    }

    /** Four equal discs are as close as can be; of seven the bounds differ by more than a rounding. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            device: 1 mm | device: 2 mm | device: 1.5 mm                  ; Descartes            ; false
            device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm     ; no smaller one       ; false
            device: 3 Fr | device: 3 Fr | device: 3 Fr | device: 3 Fr | device: 3 Fr | device: 3 Fr | device: 3 Fr ; lower end is proved  ; true
            """)
    void packingSaysWhetherASmallerLumenMayDo(String devices, String method, boolean bounds) {
        Calculation answer = Given.answer("pack", devices);
        assertTrue(answer.basis().method().contains(method), answer.basis()::method);
        assertEquals(bounds, answer.interval().isPresent());
    }

    @Test
    void rulesStandSideBySide() {
        Calculation answer = Given.answer("ratio", "device: 1.75 mm | vessel: 2.65 mm | kind: burr");
        List<DetailValue> rules = items(answer, "rules");
        assertEquals(List.of("above", "above", "within"), rules.stream().map(AnswerTest::standing).toList());
        assertEquals(new BigDecimal("0.660378"), answer.value().orElseThrow(), "rounded up");
        assertEquals(List.of("rule", "low", "high", "standing", "source", "mark"), names(rules.get(0)));
        assertEquals(List.of("rule", "high", "standing", "source", "mark"), names(rules.get(1)));
    }

    @Test
    void whatIsJustEnoughIsEnough() {
        Calculation reach = Given.answer("reach", "device: 142 cm | guide: 100 cm | needed: 34 cm");
        assertEquals(Optional.of(new DetailValue.Flag(true)), reach.detail("reaches"));
        Calculation wire = Given.answer("exchange", "in-body: 115 cm | device: 135 cm | wire: 268 cm");
        assertEquals(Optional.of(new DetailValue.Flag(true)), wire.detail("longEnough"));
        assertTrue(Given.answer("flow", "lumen: 2 mm | device: 1 mm | device: 1 mm").value().isPresent());
        assertTrue(Given.answer("bend", "device: 1 mm | lumen: 2 mm | radius: 1 mm").value().isPresent());
        assertEquals(Optional.of(new DetailValue.Number(BigDecimal.ONE)),
                Given.answer("burst", "n: 3 | mean: 1 atm | sd: 0 atm").detail("wholeAtm"));
    }

    @Test
    void whatIsRefusedIsSaidInTheUnitThatWasAskedFor() {
        String table = "row: 6 bar = 2.90 mm | row: 8 bar = 3.00 mm | ";
        Calculation diameter = Given.answer("inflate", table + "pressure: 9 bar");
        assertEquals("Diameter by the table in mm", diameter.what() + " in " + diameter.unit());
        Calculation pressure = Given.answer("inflate", table + "diameter: 3.1 mm");
        assertEquals("Pressure by the table in bar", pressure.what() + " in " + pressure.unit());
    }

    @Test
    void tellsThatTablesOverstateWithItsSource() {
        Calculation answer = Given.answer("inflate", "row: 6 atm = 2.90 mm | pressure: 6 atm");
        DetailValue.Text note = assertInstanceOf(DetailValue.Text.class, answer.detail("inVivoNote").orElseThrow());
        assertTrue(note.value().contains("14 % and 18 %") && note.value().contains("2001;53:474"), note::value);
    }

    @ParameterizedTest
    @CsvSource({ "10 mm, hardly", "9 cm, at least as long" })
    void tellsWhatTheAnswerForABendIsWorth(String radius, String validity) {
        String asked = "device: 5 mm | lumen: 12 mm | radius: " + radius;
        assertTrue(Given.answer("bend", asked).basis().validity().contains(validity));
        assertTrue(Given.answer("bend", "device: 1 mm | lumen: 2 mm | radius: 20 mm | bend-length: 5 mm").basis()
                .validity().contains("shorter than the segment"));
    }

    @Test
    void passesWhenTheLumenIsTheOneNeeded() {
        Calculation answer = Given.answer("bend", "device: 1 mm | lumen: 2 mm | radius: 12 mm | length: 10 mm");
        assertEquals(Optional.of(new DetailValue.Flag(true)), answer.detail("passes"));
        assertEquals(Optional.of(new DetailValue.Number(BigDecimal.ZERO)), answer.detail("clearanceMm"));
    }

    @Test
    void comparesTwoPaths() {
        Calculation answer = Given.answer("capstan",
                "friction: 0.2 | bend: 90 deg | bend: 90 deg | other-bend: 90 deg");
        assertEquals(new DetailValue.Items(List.of(new DetailValue.Number(new BigDecimal("0.730402")),
                new DetailValue.Number(new BigDecimal("0.533488")))),
                answer.detail("arrivingBehindEachBend").orElseThrow());
        assertEquals(Optional.of(new DetailValue.Number(new BigDecimal("0.730402"))), answer.detail("otherArriving"));
        assertEquals(Optional.of(new DetailValue.Number(new BigDecimal("0.730402"))), answer.detail("timesTheOther"));
    }

    @Test
    void helixIsToldForAPushOfOnesOwn() {
        Calculation answer = Given.answer("buckle",
                "outer: 0.3556 mm | modulus: 193 | lumen: 0.070 in | radius: 50 mm | force: 0.1145 N");
        assertEquals(323.21, number(answer, "helixPitchMm"), 0.01);
        assertEquals(1.5387e-5, number(answer, "wallForceNPerMm"), 1e-9);
        assertEquals(0.1145, number(answer, "atForceN"));
        assertEquals(34.08, number(Given.answer("buckle",
                "outer: 0.3556 mm | modulus: 193 | lumen: 0.070 in | radius: 50 mm"), "atForceN"), 0.01);
    }

    @Test
    void sampleOfBurstsIsTheSameAsItsStatistics() {
        Calculation answer = Given.answer("burst", "burst: 20 atm | burst: 22 atm | burst: 24 atm");
        assertEquals(Given.answer("burst", "n: 3 | mean: 22 atm | sd: 2 atm"), answer);
        assertEquals(Optional.empty(), answer.detail("wholeAtm"), "no room for a label");
    }

    @Test
    void unitOfAPressureIsThatOfTheTable() {
        Calculation answer = Given.answer("inflate", "row: 6 bar = 2.90 mm | row: 8 bar = 3.00 mm | diameter: 2.95 mm");
        assertEquals("bar", answer.unit());
        assertEquals(new BigDecimal("7"), answer.value().orElseThrow());
    }

    @Test
    void flowOfAnEmptyLumenIsTheWhole() {
        assertEquals(BigDecimal.ONE, Given.answer("flow", "lumen: 2 mm").value().orElseThrow());
    }

    @Test
    void detailsOfAConversionAreTheUsualUnits() {
        Calculation length = Given.answer("convert", "from: 3 Fr");
        assertEquals(List.of("mm", "in", "Fr"), length.details().stream().map(Detail::name).toList());
        assertEquals(3, number(length, "Fr"));
        Calculation pressure = Given.answer("convert", "from: 12 atm / 1216 kPa");
        assertEquals(List.of("atm", "bar", "kPa", "psi"), pressure.details().stream().map(Detail::name).toList());
        assertEquals(1215.9, number(pressure, "kPa"));
    }

    /** 200, 4 and 9 per chance; however small a chance is, it is taken where nobody says what stopping costs. */
    @Test
    void orderIsToldWithCostPerChanceAndLeavesOutWhatCannotSucceed() {
        Calculation answer = Given.answer("order",
                "option: 2:0.01 | option: 2:0.5 | option: 5:0 | option: 4.5:0.5");
        assertEquals(List.of(2.0, 4.0, 1.0), numbers(answer, "order"));
        assertEquals(List.of(4.0, 9.0, 200.0), numbers(answer, "index"));
    }

    private static List<Double> numbers(Calculation answer, String detail) {
        return items(answer, detail).stream().map(item -> ((DetailValue.Number) item).value().doubleValue()).toList();
    }

    @ParameterizedTest
    @CsvSource({ "0.1, UP, 0.1", "1.23456789, CEILING, 1.23457", "1.23456789, FLOOR, 1.23456",
        "1234567.8, CEILING, 1234570", "-1.23456789, FLOOR, -1.23457", "0.30000000000000004, CEILING, 0.3",
        "1.7e-8, CEILING, 0.000000017", "0, CEILING, 0" })
    void numbersHaveSixDigits(double value, RoundingMode rounding, BigDecimal expected) {
        assertEquals(expected, Rounded.digits(value, rounding));
    }

    @Test
    void lengthsAreRoundedAsToldAtANanometre() {
        assertEquals(new BigDecimal("0.000001"), Rounded.mm(new Length(1), RoundingMode.CEILING));
        assertEquals(new BigDecimal("0"), Rounded.mm(new Length(1), RoundingMode.FLOOR));
        assertEquals(new BigDecimal("0.0000001"), Rounded.in(LengthUnit.INCH, new Length(1), RoundingMode.CEILING));
        assertEquals(new BigDecimal("10"), Rounded.mm(Length.of("10.0", LengthUnit.MILLIMETRE), RoundingMode.FLOOR));
        assertEquals(new BigDecimal("1.24"), Rounded.decimals(1.231, 2, RoundingMode.CEILING));
    }

    @Test
    void anAnswerIsAValueOrARefusal() {
        Basis basis = new Basis("m", "v", "s", "c");
        assertThrows(IllegalArgumentException.class, () -> new Calculation("w", Optional.empty(), "1",
                Optional.empty(), basis, List.of(), Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new Interval(BigDecimal.TEN, BigDecimal.ONE));
    }

    private static double number(Calculation answer, String detail) {
        return assertInstanceOf(DetailValue.Number.class, answer.detail(detail).orElseThrow()).value().doubleValue();
    }

    private static double number(DetailValue group, int index) {
        return ((DetailValue.Number) ((DetailValue.Group) group).values().get(index).value()).value().doubleValue();
    }

    private static List<DetailValue> items(Calculation answer, String detail) {
        return assertInstanceOf(DetailValue.Items.class, answer.detail(detail).orElseThrow()).values();
    }

    private static List<String> names(DetailValue group) {
        return ((DetailValue.Group) group).values().stream().map(Detail::name).toList();
    }

    private static String standing(DetailValue rule) {
        return ((DetailValue.Group) rule).values().stream().filter(detail -> detail.name().equals("standing"))
                .map(detail -> ((DetailValue.Text) detail.value()).value()).findFirst().orElseThrow();
    }
}
