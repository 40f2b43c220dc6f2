/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.renal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.thresholds.Points;
import org.ferrule.thresholds.Source;
import org.ferrule.thresholds.Threshold;
import org.ferrule.thresholds.renal.MehranScore.Band;
import org.ferrule.thresholds.renal.MehranScore.Trait;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clearance, limits and points beside each other. */
class RenalTest {
    private static final BigDecimal KG = BigDecimal.valueOf(80);
    private static final BigDecimal MG = new BigDecimal("1.5");

    @ParameterizedTest
    @CsvSource({ "17, 80, 1.5, 17 years", "111, 80, 1.5, 111 years", "75, 8, 1.5, 8 kg", "75, 80, 88, 88 mg/dL" })
    void namesTheValueThatIsNotPlausible(int age, BigDecimal kg, BigDecimal mg, String named) {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> new CreatinineClearance(age, kg, mg, Sex.MALE));
        assertTrue(refused.getMessage().startsWith(named), refused::getMessage);
    }

    @Test
    void takesAdultsOfAnyAge() {
        assertEquals(new BigDecimal("90.37037037037037"), new CreatinineClearance(18, KG, MG, Sex.MALE).mlPerMin());
        assertEquals(new BigDecimal("18.88888888888888"), new CreatinineClearance(110, KG, MG, Sex.FEMALE).mlPerMin());
    }

    @Test
    void limitsDisagreeSideBySide() {
        BigDecimal clearance = new CreatinineClearance(75, KG, MG, Sex.MALE).mlPerMin();
        Map<RenalFigure, BigDecimal> given = Map.of(RenalFigure.WEIGHT, KG, RenalFigure.CREATININE, MG,
                RenalFigure.CLEARANCE, clearance);
        assertEquals(List.of(266, 96, 144, 178, 192, 296), ContrastLimits.published().stream()
                .flatMap(limit -> limit.limitMl(given).stream()).map(BigDecimal::intValue).toList());
        assertEquals(List.of(RenalFigure.EGFR, RenalFigure.IODINE),
                ContrastLimits.published().get(8).missing(given));
        assertEquals(Optional.empty(), ContrastLimits.published().get(8).isReachedBy(KG, given));
    }

    @Test
    void theCapIsALimitToo() {
        Map<RenalFigure, BigDecimal> heavy = Map.of(RenalFigure.WEIGHT, BigDecimal.valueOf(100),
                RenalFigure.CREATININE, BigDecimal.ONE);
        assertTrue(ContrastLimits.CIGARROA.isCapped(heavy));
        assertEquals(Optional.of(false), ContrastLimits.CIGARROA.isReachedBy(BigDecimal.valueOf(300), heavy));
        assertEquals(Optional.of(true), ContrastLimits.CIGARROA.isReachedBy(new BigDecimal("300.1"), heavy));
        Map<RenalFigure, BigDecimal> light = Map.of(RenalFigure.WEIGHT, BigDecimal.valueOf(60),
                RenalFigure.CREATININE, BigDecimal.ONE);
        assertEquals(0, BigDecimal.valueOf(300).compareTo(ContrastLimits.CIGARROA.limitMl(light).orElseThrow()));
        assertFalse(ContrastLimits.CIGARROA.isCapped(light));
        assertFalse(ContrastLimits.CIGARROA.isCapped(Map.of()));
    }

    @Test
    void someLimitsAreReachedWhereTheyStand() {
        Map<RenalFigure, BigDecimal> given = Map.of(RenalFigure.CLEARANCE, BigDecimal.valueOf(50));
        assertEquals(Optional.of(true), ContrastLimits.published().get(4).isReachedBy(BigDecimal.valueOf(200), given));
        assertEquals(Optional.of(false),
                ContrastLimits.published().get(1).isReachedBy(BigDecimal.valueOf(100), given));
        Exception refused = assertThrows(IllegalArgumentException.class, () -> ContrastLimits.published().get(1)
                .limitMl(Map.of(RenalFigure.CLEARANCE, BigDecimal.valueOf(500))));
        assertTrue(refused.getMessage().startsWith("500 mL/min"), refused::getMessage);
    }

    @Test
    void aLaboratoryHasLimitsOfItsOwn() {
        ContrastLimit own = ContrastLimit.ratio("own", Threshold.from("2.5"), RenalFigure.CLEARANCE,
                new Source("rule of the house", Source.Mark.OWN));
        assertEquals(0, BigDecimal.valueOf(125).compareTo(
                own.limitMl(Map.of(RenalFigure.CLEARANCE, BigDecimal.valueOf(50))).orElseThrow()));
    }

    /** The printed ranges 20-40 and 40-60 meet; the worse counts. */
    @ParameterizedTest
    @CsvSource({ "19.9, 6", "20, 4", "40, 4", "40.1, 2", "60, 2", "60.1, 0" })
    void ratesWhereRangesMeetCountAsTheWorse(BigDecimal rate, int expected) {
        assertEquals(expected, MehranScore.points(60, Map.of(RenalFigure.EGFR, rate), BigDecimal.ZERO, Map.of())
                .least());
    }

    @Test
    void pointsThatAreNotKnownWidenTheSum() {
        Map<RenalFigure, BigDecimal> kidney = Map.of(RenalFigure.CREATININE, MG);
        Points points = MehranScore.points(75, kidney, BigDecimal.valueOf(199), Map.of(Trait.DIABETES, true));
        assertEquals(4, points.least(), "neither 75 years nor 1.5 mg/dL is beyond the limit; one full 100 mL");
        assertEquals(22, points.most());
        assertEquals(List.of("hypotension", "balloon-pump", "heart-failure", "anaemia"), points.unknown());
    }

    @ParameterizedTest
    @CsvSource({ "0, LOW", "5, LOW", "6, MODERATE", "10, MODERATE", "11, HIGH", "16, HIGH", "17, VERY_HIGH" })
    void sumsHaveTheNamesThatWerePublished(int points, Band band) {
        assertEquals(band, Band.of(points));
    }

    @Test
    void scoreTakesOneFigureOfTheKidney() {
        assertThrows(IllegalArgumentException.class,
                () -> MehranScore.points(60, Map.of(), BigDecimal.ZERO, Map.of()));
        assertThrows(IllegalArgumentException.class, () -> MehranScore.points(60,
                Map.of(RenalFigure.CREATININE, MG, RenalFigure.EGFR, KG), BigDecimal.ZERO, Map.of()));
        assertThrows(IllegalArgumentException.class, () -> MehranScore.points(60,
                Map.of(RenalFigure.CREATININE, MG), BigDecimal.valueOf(-1), Map.of()));
    }
}
