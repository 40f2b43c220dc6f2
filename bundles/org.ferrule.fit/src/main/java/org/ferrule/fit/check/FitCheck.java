/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Terms;

/**
 * One check of the solver's pipeline. Implementations have no state that shows in an answer, and are safe to call from
 * many threads. A plug-in adds its own through the extension point for checks; the built-in ones use the same point.
 */
public interface FitCheck {

    /** Checks a question in one phase. "Does not fit" is a finding; broken input is an exception. */
    Finding check(FitQuestion question, Phase phase);

    /**
     * The same check for a single question, where it may take a tenth of a second and show more; its verdict is the
     * same.
     */
    default FitCheck inDetail() {
        return this;
    }

    /**
     * Whether a claim or a bench result about the pair speaks of what this check computes, and so outranks it. True for
     * clearances; false for what no compatibility statement covers, such as whether a device is long enough.
     */
    default boolean yieldsToStatements() {
        return false;
    }

    /**
     * Whether it may find anything in questions under these terms. A matrix leaves a check out that says no, so it must
     * not say so where it could give a reason or another verdict than "fits".
     */
    default boolean concerns(Terms terms) {
        return true;
    }

    /**
     * Whether it may find anything in questions about that inner device, whatever lies around it. Cells are answered
     * quickly where only checks that the kernel brings concern the device.
     */
    default boolean concerns(Terms terms, ReadDevice inner) {
        return concerns(terms);
    }

    /**
     * Whether the cells of a matrix show what it finds. A check that takes its time and never changes a verdict may say
     * no: then it adds its cautions and notes to single answers only, and no cell bears a mark for them.
     */
    default boolean inMatrix() {
        return true;
    }
}
