/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Looks for the arrangement that leaves most flow, or least: climbs from many starts with few multipoles, then lets discs
 * change places, then climbs from the best with more.
 */
final class Extreme {
    private static final int COARSE_TERMS = 6;
    private static final double COARSE_STEP = 1e-3;
    private static final int FINE_TERMS = 16;
    private static final double FINE_STEP = 1e-5;
    private static final int EXCHANGES = 4;

    private final double sign;

    private Extreme(double sign) {
        this.sign = sign;
    }

    /** Returns the arrangement that leaves most. */
    static List<Circle> most(List<List<Circle>> starts) {
        return new Extreme(1).search(starts);
    }

    /** Returns the arrangement that leaves least. */
    static List<Circle> least(List<List<Circle>> starts) {
        return new Extreme(-1).search(starts);
    }

    private List<Circle> search(List<List<Circle>> starts) {
        Climb best = best(starts).orElseThrow();
        for (int i = 0; i < EXCHANGES; i++) {
            Optional<Climb> better = best(exchanges(best.top()));
            if (better.isEmpty() || height(better.get()) <= height(best)) {
                break;
            }
            best = better.get();
        }
        return new Climb(sign, FINE_TERMS, FINE_STEP, best.top()).top();
    }

    private Optional<Climb> best(List<List<Circle>> starts) {
        return starts.stream().map(start -> new Climb(sign, COARSE_TERMS, COARSE_STEP, start))
                .max(Comparator.comparingDouble(this::height));
    }

    private double height(Climb climb) {
        return sign * climb.share();
    }

    /** All arrangements in which two discs of different size have changed places. */
    private static List<List<Circle>> exchanges(List<Circle> discs) {
        List<List<Circle>> all = new ArrayList<>();
        for (int i = 0; i < discs.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (discs.get(i).radius() != discs.get(j).radius()) {
                    Room.settle(exchanged(discs, i, j)).ifPresent(all::add);
                }
            }
        }
        return all;
    }

    private static List<Circle> exchanged(List<Circle> discs, int i, int j) {
        List<Circle> exchanged = new ArrayList<>(discs);
        exchanged.set(i, new Circle(discs.get(j).centre(), discs.get(i).radius()));
        exchanged.set(j, new Circle(discs.get(i).centre(), discs.get(j).radius()));
        return Collections.unmodifiableList(exchanged);
    }
}
