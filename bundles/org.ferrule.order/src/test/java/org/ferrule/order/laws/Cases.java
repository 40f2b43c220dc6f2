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
    /** Of a hundred cases so many are drawn; mutation tests are content with few. */
    private static final String PERCENT = "ferrule.cases.percent";

    private Cases() {
    }

    /** Runs the law on that many cases, or on the share that is asked for; a failure names the case and its seed. */
    public static void check(int number, Consumer<Random> law) {
        long seed = Long.getLong(SEED, 0);
        int cases = Math.max(1, number * Integer.getInteger(PERCENT, 100) / 100);
        for (int i = 0; i < cases; i++) {
            try {
                law.accept(new Random(seed + 1_000_003L * i));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("case " + i + " of seed " + seed + ": " + e.getMessage(), e);
            }
        }
    }
}
