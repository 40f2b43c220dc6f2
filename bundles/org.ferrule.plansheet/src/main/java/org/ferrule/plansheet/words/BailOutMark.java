/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.Optional;

import org.ferrule.chart.look.Glyph;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.plan.BailOut;
import org.ferrule.fit.verdict.Verdict;

/** How something that must be at hand stands, told apart by shape and word. */
public enum BailOutMark {
    /** On the shelf, and it passes the system in place. */
    READY("ready", Glyph.SEATED),
    /** What is on the shelf does not pass the system in place. */
    DOES_NOT_FIT("does not fit", Glyph.STOPPED),
    /** Nobody can tell whether it passes. */
    NOT_KNOWN("not known", Glyph.ASKED),
    /** What is on the shelf has expired. */
    EXPIRED("expired", Glyph.CLOCK),
    /** Nothing on the shelf would serve. */
    NOT_ON_SHELF("not on the shelf", Glyph.WARNING);

    private final String word;
    private final Glyph glyph;

    BailOutMark(String word, Glyph glyph) {
        this.word = word;
        this.glyph = glyph;
    }

    /** The mark that tells most of what is wrong. */
    public static BailOutMark of(BailOut bailOut) {
        return bailOut.answer().lacks().stream().map(BailOutMark::of).flatMap(Optional::stream).findFirst()
                .orElse(bailOut.isReady() ? READY : NOT_ON_SHELF);
    }

    private static Optional<BailOutMark> of(Lack lack) {
        if (lack instanceof Lack.DoesNotPass blocked) {
            return Optional.of(blocked.nearest().suitability().verdict() == Verdict.UNKNOWN ? NOT_KNOWN : DOES_NOT_FIT);
        }
        if (lack instanceof Lack.NotStated) {
            return Optional.of(NOT_KNOWN);
        }
        return lack instanceof Lack.Expired ? Optional.of(EXPIRED) : Optional.empty();
    }

    /** The words for it. */
    public String word() {
        return word;
    }

    /** Its shape. */
    public Glyph glyph() {
        return glyph;
    }
}
