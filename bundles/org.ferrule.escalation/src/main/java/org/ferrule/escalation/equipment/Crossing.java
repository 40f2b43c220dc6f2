/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * One question that the choice of a device asked of the fit solver, and its answer.
 *
 * @param way what the device had to come through
 * @param question the question
 * @param answer the answer
 */
public record Crossing(Way way, FitQuestion question, FitAnswer answer) {

    /** What a device has to come through, or over. */
    public enum Way {
        /** The guide catheter, with all that lies in it. */
        SYSTEM,
        /** The wire that it runs on, from the wire's tail. */
        WIRE,
        /** The sheath. */
        SHEATH,
        /** The catheter through which a wire is exchanged. */
        CATHETER
    }

    public Crossing {
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(answer, "answer");
    }

    /** The worse of in and out. */
    public Verdict verdict() {
        return answer.in().verdict().worse(answer.out().verdict());
    }

    /** The answer of the worse way; that of the way in where both are alike. */
    public PhaseAnswer deciding() {
        return answer.out().verdict().compareTo(answer.in().verdict()) > 0 ? answer.out() : answer.in();
    }

    /** The smallest clearance that is sure, of both ways; absent where none is known. */
    public Optional<Length> worstClearance() {
        Optional<Length> in = answer.in().clearance().map(Clearance::worst);
        Optional<Length> out = answer.out().clearance().map(Clearance::worst);
        return in.isPresent() && out.isPresent() ? Optional.of(in.get().min(out.get())) : in.or(() -> out);
    }
}
