/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * A rigid outline made of discs, such as a dual-lumen shaft or a push rod beside a tube. The discs keep their places
 * towards each other; they may overlap.
 */
public final class DiscSet implements Body {
    private final List<Disc> discs;

    /**
     * A disc of the set.
     *
     * @param x the centre in a frame common to the set, may be negative
     * @param y the centre in a frame common to the set, may be negative
     * @param diameter the diameter, zero or more
     */
    public record Disc(Length x, Length y, Length diameter) {

        /**
         * Checks the diameter.
         *
         * @throws IllegalArgumentException if it is negative
         */
        public Disc {
            if (diameter.isNegative()) {
                throw new IllegalArgumentException("negative diameter: " + diameter);
            }
        }

        private boolean overlaps(Disc other) {
            BigInteger dx = whole(x.minus(other.x));
            BigInteger dy = whole(y.minus(other.y));
            BigInteger sum = whole(diameter.plus(other.diameter));
            return dx.multiply(dx).add(dy.multiply(dy)).shiftLeft(2).compareTo(sum.multiply(sum)) < 0;
        }

        private static BigInteger whole(Length length) {
            return BigInteger.valueOf(length.thirdNanometres());
        }
    }

    /**
     * Creates a set.
     *
     * @throws IllegalArgumentException if there is no disc in it
     */
    public DiscSet(List<Disc> discs) {
        if (discs.isEmpty()) {
            throw new IllegalArgumentException("a set needs at least one disc");
        }
        this.discs = List.copyOf(discs);
    }

    /** Returns the discs in the order given. */
    public List<Disc> discs() {
        return discs;
    }

    /**
     * Returns the smallest circle round the set. Where one or two discs determine it, the bounds are exact or a third
     * of a nanometre apart; where three do, they lie within a few thirds of a nanometre.
     */
    @Override
    public Enclosure enclosure() {
        FixedDiscs fixed = fixed();
        RimBounds bounds = new RimBounds(fixed, RimSearch.search(fixed), discs.size());
        return new Enclosure(bounds.lower(), bounds.upper(), placed(fixed, bounds.centre(), List.of()));
    }

    /**
     * Returns the smallest circle round the set and a disc that may lie anywhere beside it. Both bounds are proved;
     * they are exact where the disc finds room in the circle round one or two discs of the set, else up to 2 nm apart.
     * Where the place hardly matters, as round several discs in almost one place, the search may stop earlier. The free
     * disc is the last of the result's discs.
     *
     * @param disc a diameter of zero or more
     * @throws IllegalArgumentException if the diameter is negative
     */
    @Override
    public Enclosure with(Length disc) {
        if (disc.isNegative()) {
            throw new IllegalArgumentException("negative diameter: " + disc);
        }
        FreeDiscSearch.Result found = FreeDiscSearch.search(fixed(), disc.thirdNanometres());
        RimBounds bounds = new RimBounds(found.discs(), found.rim(), discs.size());
        // A circle that the rigid discs alone determine is a bound for every place of the free disc.
        Length lower = bounds.isRigid() ? bounds.lower() : Bounds.down(found.lower());
        return new Enclosure(lower, bounds.upper(), placed(found.discs(), bounds.centre(), List.of(disc)));
    }

    /** Returns the diameters of discs of the set that do not overlap each other. */
    List<Length> apart() {
        List<Disc> apart = new ArrayList<>();
        discs.stream().sorted(Comparator.comparing(Disc::diameter).reversed())
                .filter(disc -> apart.stream().noneMatch(disc::overlaps)).forEach(apart::add);
        return apart.stream().map(Disc::diameter).toList();
    }

    private FixedDiscs fixed() {
        FixedDiscs fixed = new FixedDiscs(discs.size());
        for (int i = 0; i < discs.size(); i++) {
            fixed.set(i, doubled(x(i)), doubled(y(i)), discs.get(i).diameter().thirdNanometres());
        }
        return fixed;
    }

    /** Returns x of a centre from the first one, so that a far-off frame costs no digits. */
    private Length x(int i) {
        return discs.get(i).x().minus(discs.get(0).x());
    }

    private Length y(int i) {
        return discs.get(i).y().minus(discs.get(0).y());
    }

    private static double doubled(Length length) {
        return length.times(2).thirdNanometres();
    }

    private List<PlacedDisc> placed(FixedDiscs fixed, Rim centre, List<Length> free) {
        return IntStream.range(0, fixed.size()).mapToObj(i -> {
            Length diameter = i < discs.size() ? discs.get(i).diameter() : free.get(i - discs.size());
            return new PlacedDisc(mm(fixed.x(i) - centre.x()), mm(fixed.y(i) - centre.y()), diameter);
        }).toList();
    }

    private static double mm(double halfThirdNanometres) {
        return halfThirdNanometres / 2 / LengthUnit.MILLIMETRE.thirdNanometres();
    }
}
