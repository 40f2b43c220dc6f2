/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.Stiffness;

/**
 * A stretch of a shaft.
 *
 * @param name what it is called: "tip", "balloon", "hypotube"
 * @param from station of its distal end, from the distal tip of the device
 * @param to station of its proximal end, from the distal tip; not before {@code from}
 * @param distal outline at its distal end
 * @param proximal outline at its proximal end; the same as {@code distal} where there is no taper
 * @param distalAfter outline at its distal end after use (a re-wrapped balloon), or {@code distal}
 * @param proximalAfter outline at its proximal end after use, or {@code proximal}
 * @param afterUse what is known of the outline after use
 * @param crossingProfile whether its diameter is stated as a crossing profile (a folded balloon, a crimped stent)
 * @param rigid whether it cannot bend
 * @param source where its figures were read
 * @param stiffness its bending stiffness; absent when nobody states it
 */
public record ShaftSection(String name, Length from, Length to, Contour distal, Contour proximal, Contour distalAfter,
        Contour proximalAfter, AfterUse afterUse, boolean crossingProfile, boolean rigid, SourceRef source,
        Optional<Stiffness> stiffness) {

    /** What is known of a section's outline after use. */
    public enum AfterUse {
        /** Use does not change it. */
        UNCHANGED,
        /** Its outline after use is stated. */
        STATED,
        /** It grows (a folded balloon) and nobody states by how much: the rule set says. */
        GROWS
    }

    public ShaftSection {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(afterUse, "afterUse");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(stiffness, "stiffness");
        if (from.isNegative() || to.compareTo(from) < 0) {
            throw new IllegalArgumentException("section \"" + name + "\" runs from " + from.mm() + " mm to " + to.mm()
                    + " mm: stations must be 0 or more and in order");
        }
    }

    /** A section of which nobody states the stiffness. */
    public ShaftSection(String name, Length from, Length to, Contour distal, Contour proximal, Contour distalAfter,
            Contour proximalAfter, AfterUse afterUse, boolean crossingProfile, boolean rigid, SourceRef source) {
        this(name, from, to, distal, proximal, distalAfter, proximalAfter, afterUse, crossingProfile, rigid, source,
                Optional.empty());
    }

    /** Its outline at its distal end: before use going in, after use coming out. */
    public Contour distal(Phase phase) {
        return phase == Phase.IN ? distal : distalAfter;
    }

    /** Its outline at its proximal end: before use going in, after use coming out. */
    public Contour proximal(Phase phase) {
        return phase == Phase.IN ? proximal : proximalAfter;
    }

    /** A section of one outline that use does not change. */
    public static ShaftSection plain(String name, Length from, Length to, Contour contour) {
        return new ShaftSection(name, from, to, contour, contour, contour, contour, AfterUse.UNCHANGED, false, false,
                SourceRef.NONE);
    }
}
