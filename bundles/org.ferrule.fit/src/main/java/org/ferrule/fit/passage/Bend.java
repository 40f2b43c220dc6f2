/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Length;

/**
 * A bend on the way.
 *
 * @param where whether a catheter's lumen or a vessel is bent: a lumen does not yield, a vessel does
 * @param radius of the centre line, more than 0
 * @param angleDegrees how far it turns, more than 0; absent when not stated, and then taken to be longer than whatever
 *                     passes it
 * @param vessel diameter of the vessel that is bent, more than 0; absent for a lumen, or when not stated
 */
public record Bend(Where where, Length radius, Optional<BigDecimal> angleDegrees, Optional<Length> vessel) {

    /** What is bent. */
    public enum Where {
        /** The lumen that the device passes: a number is given. */
        LUMEN,
        /** The vessel beyond it, which straightens: only what it must straighten to is told. */
        VESSEL
    }

    public Bend {
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(angleDegrees, "angleDegrees");
        Objects.requireNonNull(vessel, "vessel");
        requirePositive("radius", radius);
        vessel.ifPresent(diameter -> requirePositive("vessel", diameter));
        angleDegrees.filter(angle -> angle.signum() <= 0).ifPresent(angle -> {
            throw new IllegalArgumentException("a bend's angle must be more than 0, not " + angle + " degrees");
        });
    }

    /** A bend of which no vessel's diameter is known. */
    public Bend(Where where, Length radius, Optional<BigDecimal> angleDegrees) {
        this(where, radius, angleDegrees, Optional.empty());
    }

    private static void requirePositive(String what, Length length) {
        if (length.compareTo(Length.ZERO) <= 0) {
            throw new IllegalArgumentException("a bend's " + what + " must be more than 0, not " + length.mm() + " mm");
        }
    }

    /** Its length along the centre line, to the nearest; absent when the angle is not stated. */
    public Optional<Length> length() {
        return angleDegrees.map(angle -> Length.ofMm(radius.mm() * Math.toRadians(angle.doubleValue())));
    }
}
