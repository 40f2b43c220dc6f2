/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.laws;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.quicktheories.generators.SourceDSL.doubles;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quicktheories.core.Gen;

/** Movements along an arc, on which the lower bounds of the search rest. */
class ArcTest {
    private static final Gen<Double> ANGLES = doubles().between(-Math.PI, Math.PI);

    // A half circle from the right over the top to the left; its middle is the top.
    @ParameterizedTest
    @CsvSource({ "90, -2", "0, -2", "180, -2", "270, 0", "45, -2.828427" })
    void fallsShortAsFarAsTheArcReaches(double directionDegrees, double expected) {
        Arc half = new Arc(0, 2, 0, Math.PI);
        assertEquals(expected, half.leastMovement(Math.toRadians(directionDegrees)), 1e-6);
    }

    @Test
    void noPointOfTheArcMovesLess() {
        laws().forAll(ANGLES, doubles().between(0.0, 2 * Math.PI), ANGLES).check((from, length, direction) -> {
            Arc arc = new Arc(0, 3, from, from + length);
            double least = IntStream.rangeClosed(0, 360).mapToDouble(i -> from + length * i / 360)
                    .map(angle -> 3 * (Math.cos(angle - direction) - Math.cos(arc.middle() - direction))).min()
                    .orElseThrow();
            return least >= arc.leastMovement(direction) - 1e-12 && least <= arc.leastMovement(direction) + 1e-3;
        });
    }
}
