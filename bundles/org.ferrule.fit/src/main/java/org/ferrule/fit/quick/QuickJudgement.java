/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import org.ferrule.fit.verdict.Authority;

/** What {@code Judgement} makes of a verdict of geometry and of claims, for every combination of them. */
final class QuickJudgement {
    private static final int YES = QuickClaims.YES_IN;
    private static final int NO = QuickClaims.NO_IN;
    private static final int SAID = 4;
    private static final int CONFLICT = 16;
    private static final int[] JUDGED = judged();

    private QuickJudgement() {
    }

    private static int[] judged() {
        int[] judged = new int[SAID * SAID];
        for (int geometry = Passing.FITS; geometry <= Passing.BLOCKED; geometry++) {
            for (int said = 0; said < SAID; said++) {
                judged[geometry * SAID + said] = judge(geometry, said);
            }
        }
        return judged;
    }

    private static int judge(int geometry, int said) {
        if (said == 0) {
            return code(geometry, Authority.GEOMETRY, false);
        }
        if (said == YES) {
            boolean contradicted = geometry == Passing.BLOCKED;
            return code(contradicted ? Passing.TIGHT : Passing.FITS, Authority.CLAIM, contradicted);
        }
        return code(Passing.BLOCKED, Authority.CLAIM, geometry == Passing.FITS || said == (YES | NO));
    }

    private static int code(int verdict, Authority authority, boolean conflict) {
        return verdict | authority.ordinal() << 2 | (conflict ? CONFLICT : 0);
    }

    /**
     * The judgement, to be taken apart by the methods below.
     *
     * @param said bits of going in, in the two lowest places
     */
    static int of(int geometry, int said) {
        return JUDGED[geometry * SAID + said];
    }

    static int verdict(int judged) {
        return judged & 3;
    }

    static int authority(int judged) {
        return judged >> 2 & 3;
    }

    static boolean isConflict(int judged) {
        return (judged & CONFLICT) != 0;
    }
}
