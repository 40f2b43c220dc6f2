/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import org.ferrule.fit.engineering.opinion.Company.Placed;

/** A piece of a moving device beside pieces that lie still, in a stretch of a lumen. In thirds of a nanometre. */
final class Gathering {
    private static final int STRIPS = 8;
    private static final int IN_LINE = 2;

    private final Company.Stretch stretch;
    private final Solid moving;
    private final long travel;
    private final boolean exact;

    Gathering(Company.Stretch stretch, Solid moving, long travel) {
        this.stretch = stretch;
        this.moving = moving;
        this.travel = travel;
        boolean straight = stretch.lumen().isStraight() && moving.isStraight()
                && stretch.beside().stream().allMatch(p -> p.solid().isStraight());
        this.exact = straight || count() <= IN_LINE;
    }

    private int count() {
        return moving.around().size() + stretch.beside().stream().mapToInt(p -> p.solid().around().size()).sum();
    }

    /** What is left with all in one line at their thickest and the lumen at its narrowest: never more than there is. */
    double inLine(double[] drawn) {
        return narrowest(from(), to(), drawn)
                - thickest(from(), to(), drawn).stream().mapToDouble(d -> d).sum();
    }

    private long from() {
        return stretch.lumen().from();
    }

    private long to() {
        return stretch.lumen().to();
    }

    /**
     * The gap.
     *
     * @param known a gap found elsewhere: how much larger than that this one is does not matter
     */
    Gap gap(double[] drawn, Gap known) {
        double high = known.high();
        double low = known.low();
        for (long[] corner : corners()) {
            double lumen = stretch.lumen().at(corner[0], drawn);
            List<Double> within = discs(Solid::within, corner, drawn);
            high = lumen - sum(within) < high ? Math.min(high, lumen - Ring.atLeast(within)) : high;
            List<Double> around = discs(Solid::around, corner, drawn);
            low = exact && lumen - sum(around) < low ? Math.min(low, lumen - Ring.enough(around, lumen - low)) : low;
        }
        for (int i = 0; !exact && i < STRIPS; i++) {
            long first = from() + (to() - from()) / STRIPS * i;
            long last = i + 1 == STRIPS ? to() : from() + (to() - from()) / STRIPS * (i + 1);
            List<Double> thickest = thickest(first, last, drawn);
            double lumen = narrowest(first, last, drawn);
            low = lumen - sum(thickest) < low ? Math.min(low, lumen - Ring.enough(thickest, lumen - low)) : low;
        }
        return new Gap(low, high);
    }

    private static double sum(List<Double> discs) {
        return discs.stream().mapToDouble(d -> d).sum();
    }

    /** The stations of the lumen and of the device at which the pieces begin and cease to lie beside each other. */
    private List<long[]> corners() {
        long first = moving.from();
        long last = moving.to();
        List<long[]> corners = new ArrayList<>(List.of(new long[] { from(), first },
                new long[] { Math.min(to(), travel - first), first },
                new long[] { from(), Math.min(last, travel - from()) }));
        if (to() + last <= travel) {
            corners.add(new long[] { to(), last });
            return corners;
        }
        if (to() + first < travel) {
            corners.add(new long[] { to(), travel - to() });
        }
        if (from() + last < travel) {
            corners.add(new long[] { travel - last, last });
        }
        return corners;
    }

    private List<Double> discs(Function<Solid, List<Piece>> of, long[] corner, double[] drawn) {
        List<Double> discs = new ArrayList<>();
        of.apply(moving).forEach(p -> discs.add(p.at(corner[1], drawn)));
        for (Placed placed : stretch.beside()) {
            of.apply(placed.solid()).forEach(p -> discs.add(p.at(placed.tipAt() - corner[0], drawn)));
        }
        return discs;
    }

    private double narrowest(long first, long last, double[] drawn) {
        return Math.min(stretch.lumen().at(first, drawn), stretch.lumen().at(last, drawn));
    }

    /** All discs, each as thick as it is anywhere in a strip. */
    private List<Double> thickest(long first, long last, double[] drawn) {
        List<Double> discs = new ArrayList<>();
        long farthest = Math.max(moving.from(), Math.min(moving.to(), travel - first));
        moving.around().forEach(p -> discs.add(thickest(p, moving.from(), farthest, drawn)));
        for (Placed placed : stretch.beside()) {
            placed.solid().around().forEach(
                    p -> discs.add(thickest(p, placed.tipAt() - last, placed.tipAt() - first, drawn)));
        }
        return discs;
    }

    private static double thickest(Piece piece, long nearer, long farther, double[] drawn) {
        return Math.max(piece.at(nearer, drawn), piece.at(farther, drawn));
    }
}
