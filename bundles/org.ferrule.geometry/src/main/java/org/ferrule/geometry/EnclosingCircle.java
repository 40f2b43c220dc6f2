/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ferrule.quantity.Length;

/**
 * The smallest circle that encloses discs which do not overlap and are free to move: the least lumen for shafts and
 * wires that lie side by side. One disc needs its own diameter, two need their sum, three have a closed form
 * by Descartes' theorem; their bounds are exact or a third of a nanometre apart. For more discs a search finds a circle
 * that is proved to be large enough and, as a rule, is the smallest one; the lower bound is proved too, and where small
 * discs hide beside larger ones, lie in a ring, or all are equal (up to 14), it meets the upper one but for rounding.
 */
public final class EnclosingCircle {
    /** How many discs are placed at most. */
    public static final int MOST_DISCS = 16;
    private static final int CLOSED_FORM = 3;

    private EnclosingCircle() {
    }

    /** Does the same as {@link #discs(List)}. */
    public static Enclosure discs(Length... diameters) {
        return discs(Arrays.asList(diameters));
    }

    /**
     * Returns the smallest circle round up to sixteen discs; round no disc at all it has no diameter. The same discs
     * always get the same answer.
     *
     * @param diameters diameters of zero or more, in any order
     * @throws IllegalArgumentException if there are more than sixteen discs, for which the search would take long, or a
     *         diameter is negative; the message names the number or the diameter
     */
    public static Enclosure discs(List<Length> diameters) {
        check(diameters);
        int[] order = IntStream.range(0, diameters.size()).boxed()
                .sorted(Comparator.comparing(diameters::get, Comparator.reverseOrder())).mapToInt(i -> i).toArray();
        List<Length> falling = Arrays.stream(order).mapToObj(diameters::get).toList();
        Enclosure enclosure = enclose(falling);
        return new Enclosure(enclosure.lowerDiameter(), enclosure.upperDiameter(), restore(enclosure.discs(), order));
    }

    /** Looks, not for long, for room in a circle. */
    static Room room(List<Length> diameters, Length diameter) {
        List<Length> falling = sized(diameters);
        return falling.size() > CLOSED_FORM ? new ManyDiscs(falling).room(diameter)
                : Room.of(enclose(falling), diameter);
    }

    /** Returns what is proved to be needed at least. */
    static Length lower(List<Length> diameters) {
        List<Length> falling = sized(diameters);
        return falling.size() > CLOSED_FORM ? new ManyDiscs(falling).lower() : enclose(falling).lowerDiameter();
    }

    /** The discs that have a size; the others lie wherever there is room. */
    private static List<Length> sized(List<Length> diameters) {
        return diameters.stream().filter(disc -> disc.compareTo(Length.ZERO) > 0).sorted(Comparator.reverseOrder())
                .toList();
    }

    private static void check(List<Length> diameters) {
        if (diameters.size() > MOST_DISCS) {
            throw new IllegalArgumentException(diameters.size() + " discs, at most " + MOST_DISCS);
        }
        diameters.stream().filter(Length::isNegative).findFirst().ifPresent(negative -> {
            throw new IllegalArgumentException("negative diameter: " + negative);
        });
    }

    private static Enclosure enclose(List<Length> falling) {
        return switch (falling.size()) {
            case 0 -> exactly(Length.ZERO, List.of());
            case 1 -> exactly(falling.get(0), List.of(new PlacedDisc(0, 0, falling.get(0))));
            case 2 -> two(falling.get(0), falling.get(1));
            case 3 -> new ThreeDiscs(falling.get(0), falling.get(1), falling.get(2)).enclosure();
            default -> many(falling);
        };
    }

    /** Discs without any size lie wherever there is room. */
    private static Enclosure many(List<Length> falling) {
        int last = falling.size() - 1;
        if (falling.get(last).equals(Length.ZERO)) {
            return PointAtRim.add(enclose(falling.subList(0, last)));
        }
        return new ManyDiscs(falling).enclosure();
    }

    private static Enclosure two(Length large, Length small) {
        // Each centre lies as far from the middle as the other disc's radius.
        return exactly(large.plus(small), List.of(new PlacedDisc(-small.mm() / 2, 0, large),
                new PlacedDisc(large.mm() / 2, 0, small)));
    }

    private static Enclosure exactly(Length diameter, List<PlacedDisc> discs) {
        return new Enclosure(diameter, diameter, discs);
    }

    private static List<PlacedDisc> restore(List<PlacedDisc> discs, int[] order) {
        PlacedDisc[] restored = new PlacedDisc[order.length];
        for (int i = 0; i < order.length; i++) {
            restored[order[i]] = discs.get(i);
        }
        return List.of(restored);
    }
}
