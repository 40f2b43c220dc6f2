/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.math.BigInteger;
import java.util.Optional;
import org.ferrule.quantity.Length;

/**
 * A straight cylinder that does not bend, of diameter d and length L, in a bent lumen: a torus of inner diameter D
 * whose centreline has the radius R. Halfway along, the cylinder touches the inner side of the bend, at R - D/2 from
 * the bend's axis; both ends touch the outer side with their far corners. So (R-D/2+d)^2 + (L/2)^2 = (R+D/2)^2, or
 *
 * <pre>
 * L^2 = 4 (D-d) (2R+d)
 * </pre>
 *
 * which is linear in D and in R. The sphere about the bend's centre through the outer side and the one through the
 * inner side let no cylinder be longer, and while R is at least D/2 no other point of the ends reaches the wall before
 * the far corner does, so the result is exact for the torus. All results are rounded to the careful side at a third of
 * a nanometre. {@link Validity} says what they are worth for a real bend. The lumen must not yield: for a guide or an
 * extension the result is a pass or a stop, for a vessel it only tells that the vessel has to straighten. For a rounded
 * nose take the cylinder through its points of contact; for other devices beside it, the lumen less their circle.
 */
public final class RigidInBend {

    private RigidInBend() {
    }

    /** What a result is worth for a bend of which the figures are known. */
    public enum Validity {
        /** The bend is wide enough and as long as the segment. */
        HOLDS,
        /** The bend is shorter than the segment, which may pass although the result says no; a yes holds. */
        CAREFUL,
        /** The radius is below the diameter of the lumen: hardly a bent tube any more, so rely on nothing. */
        TOO_TIGHT
    }

    /**
     * Returns the length of the longest cylinder that passes, rounded down; zero if it does not enter even a straight
     * lumen.
     *
     * @param lumen the inner diameter D, above zero
     * @param device the cylinder's diameter d, zero or more
     * @param radius the centreline's radius R, at least half of the lumen
     * @throws IllegalArgumentException naming the figures outside these ranges
     */
    public static Length longest(Length lumen, Length device, Length radius) {
        checkLumen(lumen, radius);
        checkDevice(device);
        if (device.compareTo(lumen) >= 0) {
            return Length.ZERO;
        }
        BigInteger square = product(lumen.minus(device), twiceRadiusPlus(device, radius)).shiftLeft(2);
        return Bounds.ofRoot(BigInteger.ZERO, square, BigInteger.ONE).lower();
    }

    /**
     * Returns the inner diameter of the smallest lumen that lets the cylinder pass, rounded up. The formula holds where
     * this diameter is at most twice the radius; {@link #validity} tells.
     *
     * @param device the cylinder's diameter d, zero or more
     * @param length the cylinder's length L, zero or more
     * @param radius the centreline's radius R, above zero
     * @throws IllegalArgumentException naming the figures outside these ranges
     */
    public static Length lumenNeeded(Length device, Length length, Length radius) {
        checkDevice(device);
        checkLength(length);
        if (radius.compareTo(Length.ZERO) <= 0) {
            throw new IllegalArgumentException("no bend of radius " + radius);
        }
        BigInteger fourfold = twiceRadiusPlus(device, radius).shiftLeft(2);
        return device.plus(Bounds.ofQuotient(product(length, length), fourfold).upper());
    }

    /**
     * Returns the centreline's radius of the narrowest bend that lets the cylinder pass, rounded up, and never less
     * than the lumen, where the result ceases to hold; nothing if it is as thick as the lumen, so that it passes no
     * bend at all.
     *
     * @param lumen the inner diameter D, above zero
     * @param device the cylinder's diameter d, zero or more
     * @param length the cylinder's length L, zero or more
     * @throws IllegalArgumentException naming the figures outside these ranges
     */
    public static Optional<Length> leastRadius(Length lumen, Length device, Length length) {
        checkLumen(lumen, lumen);
        checkDevice(device);
        checkLength(length);
        if (device.compareTo(lumen) >= 0) {
            return Optional.empty();
        }
        BigInteger room = BigInteger.valueOf(lumen.minus(device).thirdNanometres());
        BigInteger straight = product(device, lumen.minus(device)).shiftLeft(2);
        Length radius = Bounds.ofQuotient(product(length, length).subtract(straight), room.shiftLeft(3)).upper();
        return Optional.of(radius.max(lumen));
    }

    /**
     * Tells what a result is worth.
     *
     * @param lumen the inner diameter
     * @param radius the centreline's radius
     * @param bend the length of the bend along its centreline, if it is known; else taken as long enough
     * @param segment the length of the cylinder
     */
    public static Validity validity(Length lumen, Length radius, Optional<Length> bend, Length segment) {
        if (radius.compareTo(lumen) < 0) {
            return Validity.TOO_TIGHT;
        }
        boolean shorter = bend.isPresent() && bend.get().compareTo(segment) < 0;
        return shorter ? Validity.CAREFUL : Validity.HOLDS;
    }

    private static BigInteger twiceRadiusPlus(Length device, Length radius) {
        return BigInteger.valueOf(radius.times(2).plus(device).thirdNanometres());
    }

    private static BigInteger product(Length one, Length other) {
        return product(one, BigInteger.valueOf(other.thirdNanometres()));
    }

    private static BigInteger product(Length one, BigInteger other) {
        return BigInteger.valueOf(one.thirdNanometres()).multiply(other);
    }

    private static void checkLumen(Length lumen, Length radius) {
        if (lumen.compareTo(Length.ZERO) <= 0 || radius.times(2).compareTo(lumen) < 0) {
            throw new IllegalArgumentException("no bent lumen of diameter " + lumen + " and radius " + radius);
        }
    }

    private static void checkDevice(Length device) {
        if (device.isNegative()) {
            throw new IllegalArgumentException("negative diameter: " + device);
        }
    }

    private static void checkLength(Length length) {
        if (length.isNegative()) {
            throw new IllegalArgumentException("negative length: " + length);
        }
    }
}
