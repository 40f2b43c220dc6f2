/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ready;

import java.util.List;
import java.util.Optional;

import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.fit.verdict.Verdict;

/** Whether a technique is ready for a case: by a shape and a word. */
public enum ReadyMark {

    /** It is planned, and what it takes is there. */
    READY("\u25cf", "ready"),
    /** It is planned, and takes the last unit of something. */
    LAST_ONE("\u25d4", "last one"),
    /** It is planned with something that is tight, while something that fits is not there. */
    SUBSTITUTE("\u25c6", "substitute"),
    /** What it would take has expired. */
    EXPIRED("\u2715", "expired"),
    /** What it would take is not on the shelf, or was used up. */
    MISSING("\u25cb", "missing"),
    /** What is on the shelf does not serve, or something does not hold. */
    NOT_POSSIBLE("\u2013", "not possible"),
    /** It could be done, but the plan does without it. */
    NOT_PLANNED("\u00b7", "not planned");

    private final String shape;
    private final String word;

    ReadyMark(String shape, String word) {
        this.shape = shape;
        this.word = word;
    }

    /** Returns its word. */
    public String word() {
        return word;
    }

    /** Returns its shape and its word. */
    public String words() {
        return shape + " " + word;
    }

    /** Returns the mark of a technique or a set-up in a plan; nothing when its ladder does not have it. */
    static Optional<ReadyMark> of(Plan plan, String move) {
        Optional<Rung> rung = plan.rungs().stream().filter(r -> r.move().id().equals(move)).findFirst();
        return rung.map(ReadyMark::of).or(() -> plan.leftOut().stream().filter(l -> l.move().id().equals(move))
                .findFirst().map(ReadyMark::of));
    }

    private static ReadyMark of(Rung rung) {
        List<RoleAnswer> roles = rung.equipment().roles();
        if (roles.stream().anyMatch(ReadyMark::isSubstituted)) {
            return SUBSTITUTE;
        }
        return roles.stream().anyMatch(ReadyMark::takesLast) ? LAST_ONE : READY;
    }

    private static boolean takesLast(RoleAnswer role) {
        return role.role().selection().equipment().isEmpty()
                && role.chosen().filter(c -> c.supply().usable() <= role.role().count()).isPresent();
    }

    private static boolean isSubstituted(RoleAnswer role) {
        return role.chosen().filter(c -> c.suitability().verdict() == Verdict.TIGHT).isPresent()
                && role.ranked().stream().anyMatch(ReadyMark::wouldFit);
    }

    private static boolean wouldFit(Candidate candidate) {
        return candidate.suitability().verdict() == Verdict.FITS && !candidate.supply().suffices();
    }

    private static ReadyMark of(LeftOut leftOut) {
        if (leftOut.lacks().isEmpty()) {
            return leftOut.why() == LeftOut.Why.IMPOSSIBLE || leftOut.why() == LeftOut.Why.NOT_AFTER ? NOT_POSSIBLE
                    : NOT_PLANNED;
        }
        List<Lack> lacks = leftOut.lacks();
        boolean elsewhere = lacks.stream().anyMatch(lack -> lack instanceof Lack.FactMissing
                || lack instanceof Lack.WrongSize || lack instanceof Lack.NotStated
                || lack instanceof Lack.SetupImpossible);
        if (!elsewhere && lacks.stream().anyMatch(Lack.Expired.class::isInstance)) {
            return EXPIRED;
        }
        boolean missing = lacks.stream().anyMatch(lack -> lack instanceof Lack.NotOnShelf
                || lack instanceof Lack.NothingMatches || lack instanceof Lack.UsedUp);
        return !elsewhere && missing ? MISSING : NOT_POSSIBLE;
    }
}
