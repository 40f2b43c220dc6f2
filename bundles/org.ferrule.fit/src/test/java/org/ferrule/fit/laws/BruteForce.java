/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.OptionalInt;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.laws.RandomFigure.Interval;
import org.ferrule.fit.laws.RandomSection.Use;
import org.ferrule.fit.passage.Direction;

/**
 * A passage worked out station by station, without the kernel: every step of the device against every step of the lumen
 * that it passes.
 */
final class BruteForce {
    private final RandomPassage passage;
    private final Phase phase;
    private double leastWorst = Double.POSITIVE_INFINITY;
    private OptionalInt first = OptionalInt.empty();
    private OptionalInt last = OptionalInt.empty();

    private BruteForce(RandomPassage passage, Phase phase) {
        this.passage = passage;
        this.phase = phase;
    }

    static BruteForce of(RandomPassage passage, Phase phase) {
        BruteForce force = new BruteForce(passage, phase);
        for (RandomSection section : passage.shaft()) {
            for (RandomSection bore : passage.bore()) {
                force.meet(section, bore);
            }
        }
        return force;
    }

    /** The least worst-case clearance in thirds of a nanometre; infinite where nothing meets. */
    double leastWorst() {
        return leastWorst;
    }

    /** The travel in steps at which the first, or last, station overlaps; empty where none does. */
    OptionalInt overlap(Phase which) {
        return which == Phase.IN ? first : last;
    }

    private void meet(RandomSection section, RandomSection bore) {
        for (int s = section.from(); s <= section.to(); s++) {
            for (int x = bore.from(); x <= bore.to(); x++) {
                int travel = travel(s, x);
                if (travel <= passage.travel() && nearestTravel(section, bore) < passage.travel()) {
                    compare(bore, x, section, s, travel);
                }
            }
        }
    }

    private int travel(int s, int x) {
        return passage.direction() == Direction.TIP_FIRST ? s + x
                : passage.shaftLength() - s + passage.boreLength() - x;
    }

    /** Sections that only touch at the end of the travel do not meet. */
    private int nearestTravel(RandomSection section, RandomSection bore) {
        return passage.direction() == Direction.TIP_FIRST ? travel(section.from(), bore.from())
                : travel(section.to(), bore.to());
    }

    private void compare(RandomSection bore, int x, RandomSection section, int s, int travel) {
        Interval lumen = figure(bore, bore.start(), bore.end(), x);
        if (s >= portOf(section)) {
            note(lumen, outline(section, s).plus(interval(passage.wire())), travel);
        }
        if (s <= portOf(section)) {
            note(lumen, outline(section, s), travel);
        }
    }

    /** The port where it cuts the section; beyond it where it does not. */
    private int portOf(RandomSection section) {
        if (passage.port() == RandomPassage.NONE || passage.port() >= section.to()) {
            return Integer.MAX_VALUE;
        }
        return passage.port() <= section.from() ? Integer.MIN_VALUE : passage.port();
    }

    private void note(Interval lumen, Interval device, int travel) {
        leastWorst = Math.min(leastWorst, lumen.low() - device.high());
        boolean assumed = lumen.assumed() || device.assumed();
        double deciding = assumed ? lumen.high() - device.low() : lumen.centre() - device.centre();
        if (deciding < -1) {
            first = OptionalInt.of(Math.min(first.orElse(travel), travel));
            last = OptionalInt.of(Math.max(last.orElse(travel), travel));
        }
    }

    /** The outline at a station in the phase: what is folded has one figure, what is stated after use another. */
    private Interval outline(RandomSection section, int s) {
        if (section.use() == Use.PLAIN) {
            return figure(section, section.start(), section.end(), s);
        }
        Interval folded = interval(section.start());
        if (phase == Phase.IN) {
            return folded;
        }
        return section.use() == Use.STATED ? interval(section.end())
                : folded.grown(1.05, 1.1, 1 + (10 + passage.rules().growthPercent()) / 100.0);
    }

    private Interval figure(RandomSection section, RandomFigure start, RandomFigure end, int station) {
        double share = (double) (station - section.from()) / (section.to() - section.from());
        return interval(start).towards(interval(end), share);
    }

    private Interval interval(RandomFigure figure) {
        return figure.interval(passage.rules().spanBelow(), passage.rules().spanAbove());
    }
}
