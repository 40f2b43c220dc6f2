/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.Random;
import java.util.function.Consumer;

/** Runs a law on many random cases, the same ones every time. */
final class Cases {
    private Cases() {
    }

    /** Runs the law; a failure names the case, which {@code check(number, number + 1, law)} runs again alone. */
    static void check(int number, Consumer<Random> law) {
        check(0, number, law);
    }

    static void check(int from, int to, Consumer<Random> law) {
        for (int i = from; i < to; i++) {
            try {
                law.accept(new Random(1_000_003L * i));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("case " + i + ": " + e.getMessage(), e);
            }
        }
    }
}
