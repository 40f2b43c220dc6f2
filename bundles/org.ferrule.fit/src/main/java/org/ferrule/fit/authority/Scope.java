/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * Whether a statement holds under the conditions of a question. A "no" carries over to every harder condition: a
 * thicker wire, others in the same lumen, and coming out after going in, since use makes no outline smaller. A "yes"
 * carries over to none, but holds for easier ones: a thinner wire, and nothing else in the lumen. A question that
 * leaves the wire open asks for every wire.
 */
final class Scope {
    private final FitQuestion question;
    private final Phase phase;
    private final Surrounding surrounding;

    /** The scope of a question as far as it is about that lumen. */
    Scope(FitQuestion question, Phase phase, Surrounding surrounding) {
        this.question = question;
        this.phase = phase;
        this.surrounding = surrounding;
    }

    /**
     * Whether a statement about the lumen holds.
     *
     * @param covers the phases that it speaks of
     * @param stated the wire that it speaks of; absent when it does not mention one
     * @param besideOthers whether it speaks of the device with others in the same lumen
     */
    boolean holds(boolean yes, Set<Phase> covers, Optional<Dimension> stated, boolean besideOthers) {
        boolean speaksOfPhase = covers.contains(phase) || !yes && covers.contains(Phase.IN);
        return speaksOfPhase && (!yes || !goesInUsed()) && holdsBesideOthers(yes, besideOthers)
                && (stated.isEmpty() || holdsForWire(yes, stated.get()));
    }

    /** Nobody's papers speak of putting a balloon in again that was inflated before. */
    private boolean goesInUsed() {
        return phase == Phase.IN && question.conditions().afterInflation() && question.inner().device().changesByUse();
    }

    /** Where the way leads through an extension, a "yes" about the lumen around it does not speak of all of it. */
    private boolean holdsBesideOthers(boolean yes, boolean besideOthers) {
        if (question.conditions().alone()) {
            return yes || !besideOthers;
        }
        return !yes || besideOthers && surrounding.isInnermost(question);
    }

    private boolean holdsForWire(boolean yes, Dimension stated) {
        Optional<Length> wire = wireOf(question);
        if (wire.isEmpty() || !stated.readable()) {
            return !yes;
        }
        int order = wire.get().compareTo(stated.label());
        return yes ? order <= 0 : order >= 0;
    }

    /** The wire in the question: the inner device itself, or the one that it runs over. */
    private static Optional<Length> wireOf(FitQuestion question) {
        boolean isWire = question.inner().device().kind() == DeviceKind.GUIDEWIRE;
        return isWire ? Labels.ofWhatEnters(question).filter(Labels.Label::complete).map(Labels.Label::extreme)
                : question.inner().wire().label();
    }
}
