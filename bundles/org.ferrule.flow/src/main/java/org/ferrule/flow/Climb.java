/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Discs moved step by step to where they leave more flow, or less, until no step helps: steepest ascent within the room
 * that there is.
 */
final class Climb {
    private static final double FIRST_STEP = 0.2;
    private static final double LONGEST_STEP = 0.5;
    private static final double PROBE = 1e-4;
    private static final int STEPS = 80;

    private final double sign;
    private final int terms;
    private List<Circle> discs;
    private Multipoles flow;

    /**
     * Climbs to the top.
     *
     * @param sign 1 to find more flow, -1 to find less
     * @param terms multipoles in each disc
     * @param shortestStep where to stop, in radii of the lumen
     * @param start discs side by side in the lumen
     */
    Climb(double sign, int terms, double shortestStep, List<Circle> start) {
        this.sign = sign;
        this.terms = terms;
        discs = start;
        flow = new Multipoles(start, terms);
        climb(shortestStep);
    }

    private void climb(double shortestStep) {
        double step = FIRST_STEP;
        Optional<List<Complex>> way = way();
        for (int i = 0; i < STEPS && step > shortestStep && way.isPresent(); i++) {
            if (advance(way.get(), step)) {
                step = Math.min(LONGEST_STEP, step * 2);
                way = way();
            } else {
                step /= 4;
            }
        }
    }

    private boolean advance(List<Complex> way, double step) {
        Optional<List<Circle>> next = Room.settle(moved(way, step));
        if (next.isEmpty()) {
            return false;
        }
        Multipoles there = new Multipoles(next.get(), terms);
        if (sign * there.share() <= sign * flow.share()) {
            return false;
        }
        discs = next.get();
        flow = there;
        return true;
    }

    /** Returns the direction of ascent that wall and neighbours leave open, the fastest disc at speed 1. */
    private Optional<List<Complex>> way() {
        List<Complex> steepest = new ArrayList<>();
        for (int i = 0; i < discs.size(); i++) {
            steepest.add(flow.gradient(i).times(sign));
        }
        return unit(steepest).flatMap(uphill -> Room.settle(moved(uphill, PROBE))).flatMap(this::towards);
    }

    private Optional<List<Complex>> towards(List<Circle> there) {
        List<Complex> way = new ArrayList<>();
        for (int i = 0; i < discs.size(); i++) {
            way.add(there.get(i).centre().minus(discs.get(i).centre()).times(1 / PROBE));
        }
        return unit(way);
    }

    private static Optional<List<Complex>> unit(List<Complex> way) {
        double fastest = way.stream().mapToDouble(Complex::size).max().orElseThrow();
        return fastest < PROBE ? Optional.empty()
                : Optional.of(way.stream().map(speed -> speed.times(1 / fastest)).toList());
    }

    private List<Circle> moved(List<Complex> way, double step) {
        List<Circle> moved = new ArrayList<>();
        for (int i = 0; i < discs.size(); i++) {
            moved.add(discs.get(i).moved(way.get(i).times(step)));
        }
        return moved;
    }

    /** Returns where the discs came to rest. */
    List<Circle> top() {
        return discs;
    }

    /** Returns the share that is left there. */
    double share() {
        return flow.share();
    }
}
