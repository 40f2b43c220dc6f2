/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.laws;

import java.util.Random;
import java.util.function.Consumer;

/** Runs a law on many random cases, the same ones in every build; the property of the other laws gives new ones. */
public final class Cases {
    private static final String SEED = "QT_SEED";

    private Cases() {
    }

    /** Runs the law on that many cases; a failure names the case and its seed. */
    public static void check(int number, Consumer<Random> law) {
        long seed = Long.getLong(SEED, 0);
        for (int i = 0; i < number; i++) {
            try {
                law.accept(new Random(seed + 1_000_003L * i));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("case " + i + " of seed " + seed + ": " + e.getMessage(), e);
            }
        }
    }
}
