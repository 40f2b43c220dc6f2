/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Taper;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;

/**
 * A stretch of a curve. Stations count from the landmark, proximal ones are positive.
 *
 * @param section what it is called; may be empty
 * @param from its distal end
 * @param to its proximal end, not before {@code from}
 * @param diameter from the distal to the proximal end; absent when it is not known
 * @param notes why it is not known, or which of its ends the rule set and not the label gives
 * @param source where it was read
 */
public record Piece(String section, Length from, Length to, Optional<Taper> diameter, List<Reason> notes,
        SourceRef source) {

    public Piece {
        Objects.requireNonNull(section, "section");
        Objects.requireNonNull(diameter, "diameter");
        notes = List.copyOf(notes);
        Objects.requireNonNull(source, "source");
        if (to.compareTo(from) < 0) {
            throw new IllegalArgumentException(
                    "section \"" + section + "\" runs from " + from + " back to " + to);
        }
    }

    /**
     * A stretch that was counted from the distal tip.
     *
     * @param landmark the station, from the tip, from which the piece is to count
     */
    public static Piece of(Stretch stretch, Length landmark) {
        return new Piece(stretch.name(), stretch.from().minus(landmark), stretch.to().minus(landmark),
                stretch.diameter(), stretch.notes(), stretch.source());
    }

    /** Whether the rule set gives an end, or the centre, that the label does not state. */
    public boolean isAssumed() {
        return notes.stream().anyMatch(note -> note.code() == ReasonCode.SPAN_ASSUMED)
                || diameter.map(Taper::centreAssumed).orElse(false);
    }

    /** Whether a station lies in it or at one of its ends. */
    boolean touches(Length station) {
        return station.compareTo(from) >= 0 && station.compareTo(to) <= 0;
    }

    /** Its figure at a station that it touches, rounded as told where it tapers; absent when it is not known. */
    Optional<Figure> at(Length station, RoundingMode rounding) {
        return diameter.map(taper -> at(taper, station, rounding));
    }

    private Figure at(Taper taper, Length station, RoundingMode rounding) {
        if (taper.isConstant() || station.compareTo(from) <= 0) {
            return taper.start();
        }
        return station.compareTo(to) >= 0 ? taper.end()
                : taper.start().towards(taper.end(), station.minus(from), to.minus(from), rounding);
    }
}
