/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

/**
 * Verdicts, authorities and marks of both phases in ten bits. From the lowest: verdict in (2 bits), authority in (2),
 * verdict out (2), authority out (2), conflict (1), caution (1); verdicts and authorities by their ordinals.
 */
public final class Marks {
    /** How many bits there are. */
    public static final int BITS = 10;
    /** How many values verdict and authority of a phase have together. */
    public static final int PHASE = 16;

    private static final int OUT = 4;
    private static final int CONFLICT = 1 << 8;
    private static final int CAUTION = 1 << 9;

    private Marks() {
    }

    /** Puts them together. */
    public static int of(int verdictIn, int authorityIn, int verdictOut, int authorityOut, boolean conflict,
            boolean caution) {
        return phase(verdictIn, authorityIn) | phase(verdictOut, authorityOut) << OUT | (conflict ? CONFLICT : 0)
                | (caution ? CAUTION : 0);
    }

    /** Verdict and authority of one phase. */
    public static int phase(int verdict, int authority) {
        return verdict | authority << 2;
    }

    /** Verdict and authority going in, a number below {@link #PHASE}. */
    public static int in(int marks) {
        return marks & PHASE - 1;
    }

    /** Verdict and authority coming out, a number below {@link #PHASE}. */
    public static int out(int marks) {
        return marks >> OUT & PHASE - 1;
    }

    /** Whether authorities contradict each other in any phase. */
    public static boolean hasConflict(int marks) {
        return (marks & CONFLICT) != 0;
    }

    /** Whether there is something to watch in any phase. */
    public static boolean hasCaution(int marks) {
        return (marks & CAUTION) != 0;
    }
}
