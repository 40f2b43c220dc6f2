/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Systems of which the solution is known. */
class CholeskyTest {

    @Test
    void solvesASymmetricSystem() {
        double[][] matrix = { { 4, 2, 0 }, { 2, 5, 2 }, { 0, 2, 6 } };
        assertArrayEquals(new double[] { 1, -1, 2 }, new Cholesky(matrix).solve(new double[] { 2, 1, 10 }), 1e-14);
    }

    /** Two equations that say the same, and one that no positive matrix holds. */
    @Test
    void refusesWhatHasNoSingleSolution() {
        assertRefused("not positive definite: pivot 1 is 0.0", new double[][] { { 1, 1 }, { 1, 1 } });
        assertRefused("not positive definite: pivot 0 is -1.0", new double[][] { { -1 } });
        assertRefused("not positive definite: pivot 0 is NaN", new double[][] { { Double.NaN } });
    }

    private static void assertRefused(String message, double[][] matrix) {
        assertEquals(message, assertThrows(ArithmeticException.class, () -> new Cholesky(matrix)).getMessage());
    }
}
