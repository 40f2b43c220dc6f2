/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Arrangements from which a search begins, the same every time: one that is known to fit, scattered ones, and rows along
 * the wall in various orders.
 */
final class Starts {
    private static final int SEED = 1400;
    private static final int SCATTERED = 12;
    /** For each disc, since the order along the wall matters. */
    private static final int ROWS = 10;

    private final Random random = new Random(SEED);
    private final List<Circle> known;

    private Starts(List<Circle> known) {
        this.known = known;
    }

    /** Returns the known arrangement and as many others as found room. */
    static List<List<Circle>> from(List<Circle> known) {
        Starts starts = new Starts(known);
        List<List<Circle>> all = new ArrayList<>(List.of(known));
        Stream.concat(Stream.generate(starts::scattered).limit(SCATTERED),
                Stream.generate(starts::row).limit(ROWS * known.size()))
                .flatMap(start -> Room.settle(start).stream()).forEach(all::add);
        return all;
    }

    private List<Circle> scattered() {
        return known.stream().map(disc -> at(disc, Math.sqrt(random.nextDouble()) * (1 - disc.radius()),
                2 * Math.PI * random.nextDouble())).toList();
    }

    private static Circle at(Circle disc, double distance, double angle) {
        return new Circle(new Complex(distance * Math.cos(angle), distance * Math.sin(angle)), disc.radius());
    }

    private List<Circle> row() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < known.size(); i++) {
            order.add(i);
        }
        Collections.shuffle(order, random);
        Circle[] row = new Circle[order.size()];
        double angle = 0;
        for (int k = 0; k < row.length; k++) {
            Circle disc = known.get(order.get(k));
            angle += k == 0 ? 0 : angleBetween(known.get(order.get(k - 1)).radius(), disc.radius());
            row[order.get(k)] = at(disc, 1 - disc.radius(), angle);
        }
        return List.of(row);
    }

    /** The angle from one disc to the next where both touch the wall and each other; half a turn if they cannot. */
    private static double angleBetween(double one, double other) {
        double a = 1 - one;
        double b = 1 - other;
        double c = one + other;
        return Math.acos(Math.max(-1, (a * a + b * b - c * c) / (2 * a * b)));
    }
}
