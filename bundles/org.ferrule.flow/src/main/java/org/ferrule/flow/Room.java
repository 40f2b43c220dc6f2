/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts discs right that overlap or reach out of the lumen, moving them as little as need be. */
final class Room {
    /** What is left of an overlap, in radii of the lumen: below a nanometre. */
    private static final double TOUCHING = 1e-9;
    private static final int ROUNDS = 400;

    private final List<Circle> discs;
    private double worst;

    private Room(List<Circle> discs) {
        this.discs = new ArrayList<>(discs);
    }

    /** Returns the discs side by side in the lumen; nothing where pushing them apart and inwards does not end. */
    static Optional<List<Circle>> settle(List<Circle> discs) {
        Room room = new Room(discs);
        for (int round = 0; round < ROUNDS; round++) {
            room.push();
            if (room.worst <= TOUCHING) {
                return Optional.of(List.copyOf(room.discs));
            }
        }
        return Optional.empty();
    }

    private void push() {
        worst = 0;
        for (int i = 0; i < discs.size(); i++) {
            for (int j = 0; j < i; j++) {
                part(i, j);
            }
        }
        for (int i = 0; i < discs.size(); i++) {
            pull(i);
        }
    }

    /** Pushes both discs by half of their overlap. */
    private void part(int i, int j) {
        double overlap = discs.get(i).overlap(discs.get(j));
        if (overlap > 0) {
            worst = Math.max(worst, overlap);
            Complex apart = discs.get(i).centre().minus(discs.get(j).centre());
            double size = apart.size();
            Complex push = size == 0 ? new Complex(overlap / 2, 0) : apart.times(overlap / 2 / size);
            discs.set(i, discs.get(i).moved(push));
            discs.set(j, discs.get(j).moved(push.times(-1)));
        }
    }

    private void pull(int i) {
        Circle disc = discs.get(i);
        if (disc.excess() > 0) {
            worst = Math.max(worst, disc.excess());
            discs.set(i, disc.moved(disc.centre().times(-disc.excess() / disc.centre().size())));
        }
    }
}
