/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A device pushed into a lumen step by step. The steps are the travels at which an end of one of its pieces reaches an
 * end of a piece of the lumen, and the last one; in between, every gap changes linearly with the travel, and so does it
 * along the lumen within two pieces. So the least gap over all steps, at both ends of what two pieces share, is the
 * least of the whole way.
 */
final class Insertion implements Push {

    /** Two pieces that lie beside each other at a travel. */
    private record Meeting(Piece lumen, double x, Piece device, double s) {
        double gap(double[] drawn) {
            return lumen.at(x, drawn) - device.at(s, drawn);
        }
    }

    private final List<Meeting> meetings = new ArrayList<>();

    Insertion(List<Piece> lumen, List<Piece> device, long travel) {
        for (long step : steps(lumen, device, travel)) {
            for (Piece around : lumen) {
                for (Piece inside : device) {
                    meet(around, inside, step, travel);
                }
            }
        }
    }

    private static TreeSet<Long> steps(List<Piece> lumen, List<Piece> device, long travel) {
        TreeSet<Long> steps = new TreeSet<>(List.of(travel));
        for (Piece around : lumen) {
            for (Piece inside : device) {
                steps.addAll(List.of(around.from() + inside.from(), around.from() + inside.to(),
                        around.to() + inside.from(), around.to() + inside.to()));
            }
        }
        steps.removeIf(step -> step > travel);
        return steps;
    }

    /** Pieces that would only touch at the very end of the way do not meet. */
    private void meet(Piece around, Piece inside, long step, long travel) {
        long first = Math.max(around.from(), step - inside.to());
        long last = Math.min(around.to(), step - inside.from());
        if (first <= last && around.from() + inside.from() < travel) {
            meetings.add(new Meeting(around, first, inside, step - first));
            if (last > first) {
                meetings.add(new Meeting(around, last, inside, step - last));
            }
        }
    }

    @Override
    public boolean meets() {
        return !meetings.isEmpty();
    }

    @Override
    public Gap leastGap(double[] drawn) {
        double least = Double.POSITIVE_INFINITY;
        for (Meeting meeting : meetings) {
            least = Math.min(least, meeting.gap(drawn));
        }
        return Gap.exactly(least);
    }
}
