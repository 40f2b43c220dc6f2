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
 * thicker wire, and coming out after going in, since use makes no outline smaller. A "yes" carries over to none, but
 * holds for a thinner wire, which is an easier one. A question that leaves the wire open asks for every wire.
 */
final class Scope {
    private Scope() {
    }

    /**
     * Whether a statement holds.
     *
     * @param covers the phases that it speaks of
     * @param stated the wire that it speaks of; absent when it does not mention one
     */
    static boolean holds(boolean yes, Set<Phase> covers, Optional<Dimension> stated, FitQuestion question,
            Phase phase) {
        boolean speaksOfPhase = covers.contains(phase) || !yes && covers.contains(Phase.IN);
        return speaksOfPhase && (stated.isEmpty() || holdsForWire(yes, stated.get(), question));
    }

    private static boolean holdsForWire(boolean yes, Dimension stated, FitQuestion question) {
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
