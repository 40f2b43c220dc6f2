/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.dose;

import static org.ferrule.thresholds.dose.DoseQuantity.AIR_KERMA;
import static org.ferrule.thresholds.dose.DoseQuantity.FLUOROSCOPY;
import static org.ferrule.thresholds.dose.DoseQuantity.KERMA_AREA;
import static org.ferrule.thresholds.dose.DoseQuantity.SKIN_DOSE;

import java.util.List;

import org.ferrule.thresholds.Source;
import org.ferrule.thresholds.Threshold;

/** The published sets of levels. None of them is a dose that is safe or one that harms. */
public final class DoseRules {
    private static final String FIRST = "first-notice";
    private static final String SUBSTANTIAL = "substantial";
    private static final String PAUSE = "pause";

    private static final DoseRule NOTICES = new DoseRule("notices", List.of(
            DoseLevel.again(FIRST, AIR_KERMA, Threshold.from("3"), "1"),
            DoseLevel.once(SUBSTANTIAL, AIR_KERMA, Threshold.from("5")),
            DoseLevel.again(FIRST, SKIN_DOSE, Threshold.from("2"), "0.5"),
            DoseLevel.once(SUBSTANTIAL, SKIN_DOSE, Threshold.from("3")),
            DoseLevel.again(FIRST, KERMA_AREA, Threshold.from("300"), "100"),
            DoseLevel.once(SUBSTANTIAL, KERMA_AREA, Threshold.from("500")),
            DoseLevel.again(FIRST, FLUOROSCOPY, Threshold.from("30"), "15"),
            DoseLevel.once(SUBSTANTIAL, FLUOROSCOPY, Threshold.from("60"))),
            Source.fromMemory("Stecker et al., J Vasc Interv Radiol 2009;20:S263; NCRP report 168 (2010)"));

    private static final DoseRule FOLLOW_UP = new DoseRule("follow-up", List.of(
            DoseLevel.once("follow-up", AIR_KERMA, Threshold.beyond("5")),
            DoseLevel.once("physicist", AIR_KERMA, Threshold.beyond("10")),
            DoseLevel.once("sentinel", SKIN_DOSE, Threshold.beyond("15"))),
            Source.seen("Interv Cardiol 2014;9(3):201-207, table 2"));

    private static final DoseRule SKIN = new DoseRule("skin", List.of(
            DoseLevel.once("early-redness", SKIN_DOSE, Threshold.from("2")),
            DoseLevel.once("late-redness", SKIN_DOSE, Threshold.beyond("5"))),
            Source.seen("note of the Health Physics Society on skin"));

    private static final DoseRule STOP = new DoseRule("stop", List.of(
            DoseLevel.once(PAUSE, AIR_KERMA, Threshold.from("3")),
            DoseLevel.once(PAUSE, AIR_KERMA, Threshold.from("5")),
            DoseLevel.once(PAUSE, AIR_KERMA, Threshold.from("10")),
            DoseLevel.once(PAUSE, FLUOROSCOPY, Threshold.from("60"))), Source.commonPractice());

    private DoseRules() {
    }

    /** Returns all of them. */
    public static List<DoseRule> published() {
        return List.of(NOTICES, FOLLOW_UP, SKIN, STOP);
    }
}
