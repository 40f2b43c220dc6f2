/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.lesion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.thresholds.Points;
import org.ferrule.thresholds.lesion.OcclusionScore.Grade;
import org.ferrule.thresholds.renal.MehranScore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Scores and classes in points and letters, and in nothing else. */
class LesionTest {
    private static final BigDecimal FAR = BigDecimal.valueOf(501);

    /** 0, 1, 2, 3 and more: Morino et al. 2011. */
    @ParameterizedTest
    @CsvSource({ "0, EASY", "1, INTERMEDIATE", "2, DIFFICULT", "3, VERY_DIFFICULT", "5, VERY_DIFFICULT" })
    void occlusionsHaveTheGradesThatWerePublished(int points, Grade grade) {
        assertEquals(grade, Grade.of(points));
    }

    @Test
    void ofNothingNothingIsKnown() {
        Points points = new OcclusionScore(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty()).points();
        assertEquals(0, points.least());
        assertEquals(5, points.most());
        assertEquals(List.of("arc", "thickness", "length"),
                new CalciumScore(Optional.empty(), Optional.empty(), Optional.empty()).points().unknown());
    }

    @Test
    void refusesWhatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new OcclusionScore(Optional.empty(), Optional.empty(),
                Optional.of(BigDecimal.valueOf(181)), Optional.empty(), Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new OcclusionScore(Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.of(FAR), Optional.empty()));
        assertThrows(IllegalArgumentException.class,
                () -> new CalciumScore(Optional.of(BigDecimal.valueOf(361)), Optional.empty(), Optional.empty()));
        assertThrows(IllegalArgumentException.class,
                () -> new CalciumScore(Optional.empty(), Optional.of(FAR), Optional.empty()));
        assertThrows(IllegalArgumentException.class,
                () -> new CalciumScore(Optional.empty(), Optional.empty(), Optional.of(BigDecimal.valueOf(-1))));
        assertThrows(IllegalArgumentException.class, () -> LesionTrait.ofLength(FAR));
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> LesionTrait.ofBend(BigDecimal.valueOf(200)));
        assertEquals("bend of 200 degrees is not between 0 and 180", refused.getMessage());
    }

    @Test
    void takesTheEndsOfEveryRange() {
        for (BigDecimal end : List.of(BigDecimal.ZERO, BigDecimal.valueOf(180))) {
            assertEquals(Optional.of(end), new OcclusionScore(Optional.empty(), Optional.empty(), Optional.of(end),
                    Optional.of(end), Optional.empty()).bendDeg());
        }
        BigDecimal longest = BigDecimal.valueOf(500);
        assertEquals(Optional.of(longest), new CalciumScore(Optional.of(BigDecimal.valueOf(360)), Optional.of(longest),
                Optional.of(longest)).lengthMm());
    }

    @ParameterizedTest
    @EnumSource
    void oneTraitAloneIsB1OrC(LesionTrait trait) {
        assertEquals(trait.isOfTypeC() ? LesionClass.C : LesionClass.B1, LesionClass.of(Set.of(trait)));
    }

    @Test
    void oneTraitMoreNeverMakesItEasier() {
        for (LesionTrait first : LesionTrait.values()) {
            for (LesionTrait second : LesionTrait.values()) {
                LesionClass both = LesionClass.of(EnumSet.of(first, second));
                assertTrue(both.compareTo(LesionClass.of(Set.of(first))) >= 0, () -> first + " and " + second);
            }
        }
        assertEquals(LesionClass.A, LesionClass.of(Set.of()));
        assertEquals(10, Stream.of(LesionTrait.values()).filter(trait -> !trait.isOfTypeC()).count());
    }

    /** Points, letters and words only: no fraction comes out of a score. */
    @Test
    void noScoreTellsAChance() {
        Stream.of(OcclusionScore.class, CalciumScore.class, LesionClass.class, Points.class, MehranScore.class,
                MehranScore.Band.class, Grade.class).flatMap(type -> Stream.of(type.getDeclaredMethods()))
                .filter(method -> Modifier.isPublic(method.getModifiers())).forEach(LesionTest::assertNoFraction);
    }

    private static void assertNoFraction(Method method) {
        assertTrue(method.getReturnType() != double.class && method.getReturnType() != BigDecimal.class,
                method::toString);
    }
}
