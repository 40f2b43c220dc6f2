/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import org.ferrule.chart.look.VerdictLook;

/** What is said about the effect of an edit. */
final class EffectWords {

    private EffectWords() {
    }

    /** How many verdicts change, such as "3 verdicts change in 1 chart". */
    static String count(EditEffect effect) {
        int verdicts = effect.changes().size();
        long charts = effect.changes().stream().map(VerdictChange::chart).distinct().count();
        return verdicts + (verdicts == 1 ? " verdict changes in " : " verdicts change in ") + charts(charts);
    }

    private static String charts(long count) {
        return count + (count == 1 ? " chart" : " charts");
    }

    /** What was looked at, and how many pairs no longer fit. */
    static String explanation(EditEffect effect) {
        if (effect.charts() == 0) {
            return "No open chart depends on this document. Charts that are not open are not looked at.";
        }
        long lost = effect.changes().stream().filter(change -> isFit(change.before()) && !isFit(change.after()))
                .count();
        String open = "Compared with the file as saved, in " + charts(effect.charts())
                + " that depend on it and are open; charts that are not open are not looked at.";
        return lost == 0 ? open : (lost == 1 ? "1 pair no longer fits. " : lost + " pairs no longer fit. ") + open;
    }

    private static boolean isFit(VerdictLook look) {
        return look == VerdictLook.FITS || look == VerdictLook.FITS_BY_CLAIM;
    }
}
