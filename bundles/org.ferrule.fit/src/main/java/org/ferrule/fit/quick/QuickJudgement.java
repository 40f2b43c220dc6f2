/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import org.ferrule.fit.verdict.Authority;

/**
 * What {@code Judgement} makes of the verdicts of geometry and of claims, and what the length then leaves of it, for
 * every combination of them.
 */
final class QuickJudgement {
    private static final int YES = QuickClaims.YES_IN;
    private static final int NO = QuickClaims.NO_IN;
    private static final int SAID = 4;
    private static final int VERDICTS = Passing.BLOCKED + 1;
    /** Stands beside a phase, above its bits. */
    private static final int CONFLICT = Marks.PHASE;
    private static final int[] JUDGED = judged();

    private QuickJudgement() {
    }

    private static int[] judged() {
        int[] judged = new int[VERDICTS * SAID * VERDICTS];
        for (int length = Passing.FITS; length <= Passing.BLOCKED; length++) {
            for (int geometry = Passing.FITS; geometry <= Passing.BLOCKED; geometry++) {
                for (int said = 0; said < SAID; said++) {
                    judged[place(geometry, said, length)] = judge(geometry, said, length);
                }
            }
        }
        return judged;
    }

    private static int place(int geometry, int said, int length) {
        return (length * VERDICTS + geometry) * SAID + said;
    }

    private static int judge(int geometry, int said, int length) {
        if (said == 0) {
            return code(Math.max(geometry, length), Authority.GEOMETRY, false);
        }
        if (said == YES) {
            boolean contradicted = geometry == Passing.BLOCKED;
            int verdict = contradicted ? Passing.TIGHT : Passing.FITS;
            return code(Math.max(verdict, length), Authority.CLAIM, contradicted);
        }
        return code(Passing.BLOCKED, Authority.CLAIM, geometry == Passing.FITS || said == (YES | NO));
    }

    private static int code(int verdict, Authority authority, boolean conflict) {
        return Marks.phase(verdict, authority.ordinal()) | (conflict ? CONFLICT : 0);
    }

    /**
     * The marks of a pair.
     *
     * @param geometryIn what the geometry says going in
     * @param geometryOut what it says coming out
     * @param said what claims say, as {@link QuickClaims} puts it
     * @param length what the lengths say
     */
    static int marks(int geometryIn, int geometryOut, int said, int length, boolean caution) {
        int in = JUDGED[place(geometryIn, said & SAID - 1, length)];
        int out = JUDGED[place(geometryOut, said >> 2, length)];
        int phases = in & Marks.PHASE - 1 | (out & Marks.PHASE - 1) << 4;
        return phases | ((in | out) & CONFLICT) << 4 | (caution ? 1 << Marks.BITS - 1 : 0);
    }
}
