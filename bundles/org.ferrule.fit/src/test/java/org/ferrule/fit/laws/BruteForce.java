/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.OptionalInt;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.laws.RandomFigure.Interval;
import org.ferrule.fit.laws.RandomPassage.RandomRules;
import org.ferrule.fit.laws.RandomSection.Use;
import org.ferrule.fit.passage.Direction;

/**
 * A passage worked out station by station, without the kernel: every step of the device against every step of the lumen
 * that it passes.
 */
final class BruteForce {
    /** Growth, a taper of the device and one of the lumen are rounded by a third of a nanometre each. */
    private static final double ROUNDING = 3;

    private final RandomPassage passage;
    private final Phase phase;
    private double leastWorst = Double.POSITIVE_INFINITY;
    private final Overlap sure = new Overlap();
    private final Overlap possible = new Overlap();

    /** The first and the last travel, in steps, at which stations overlap. */
    private static final class Overlap {
        private OptionalInt first = OptionalInt.empty();
        private OptionalInt last = OptionalInt.empty();

        private void note(int travel) {
            first = OptionalInt.of(Math.min(first.orElse(travel), travel));
            last = OptionalInt.of(Math.max(last.orElse(travel), travel));
        }
    }

    private BruteForce(RandomPassage passage, Phase phase) {
        this.passage = passage;
        this.phase = phase;
    }

    static BruteForce of(RandomPassage passage, Phase phase) {
        BruteForce force = new BruteForce(passage, phase);
        for (RandomSection section : passage.shaft()) {
            int port = force.portOf(section);
            force.meet(section, section.from(), port, false);
            force.meet(section, port, section.to(), true);
        }
        return force;
    }

    /** The least worst-case clearance in thirds of a nanometre; infinite where nothing meets. */
    double leastWorst() {
        return leastWorst;
    }

    /** The travel in steps at which stations surely overlap: going in the first, coming out the last. */
    OptionalInt sureOverlap() {
        return phase == Phase.IN ? sure.first : sure.last;
    }

    /** The same where a rounding against the device is enough to let them overlap. */
    OptionalInt possibleOverlap() {
        return phase == Phase.IN ? possible.first : possible.last;
    }

    /** Lets a part of a section meet the whole lumen, with the wire beside it or without. */
    private void meet(RandomSection section, int from, int to, boolean beside) {
        for (RandomSection bore : passage.bore()) {
            for (int s = from; s <= to && meets(bore, from, to); s++) {
                for (int x = bore.from(); x <= bore.to(); x++) {
                    compare(bore, x, section, s, beside);
                }
            }
        }
    }

    /** Parts of no length, and parts that only touch at the end of the travel, do not meet. */
    private boolean meets(RandomSection bore, int from, int to) {
        int nearest = passage.direction() == Direction.TIP_FIRST ? travel(from, bore.from()) : travel(to, bore.to());
        return from < to && nearest < passage.travel();
    }

    private int travel(int s, int x) {
        return passage.direction() == Direction.TIP_FIRST ? s + x
                : passage.shaftLength() - s + passage.boreLength() - x;
    }

    private void compare(RandomSection bore, int x, RandomSection section, int s, boolean beside) {
        if (travel(s, x) <= passage.travel()) {
            Interval alone = outline(passage.rules(), section, s, phase);
            note(bore(passage.rules(), bore, x),
                    beside ? alone.plus(interval(passage.rules(), passage.wire())) : alone, travel(s, x));
        }
    }

    /** Where the port cuts the section; one of its ends where it does not. */
    private int portOf(RandomSection section) {
        int port = passage.port() == RandomPassage.NONE ? section.to() : passage.port();
        return Math.max(section.from(), Math.min(section.to(), port));
    }

    private void note(Interval lumen, Interval device, int travel) {
        leastWorst = Math.min(leastWorst, lumen.low() - device.high());
        boolean assumed = lumen.assumed() || device.assumed();
        double deciding = assumed ? lumen.high() - device.low() : lumen.centre() - device.centre();
        if (deciding < -1e-6) {
            sure.note(travel);
        }
        if (deciding < ROUNDING) {
            possible.note(travel);
        }
    }

    /** The outline at a station in the phase: what is folded has one figure, what is stated after use another. */
    static Interval outline(RandomRules rules, RandomSection section, int s, Phase phase) {
        if (section.use() == Use.PLAIN) {
            return bore(rules, section, s);
        }
        Interval folded = interval(rules, section.start());
        if (phase == Phase.IN) {
            return folded;
        }
        return section.use() == Use.STATED ? interval(rules, section.end())
                : folded.grown(1.05, 1.1, 1 + (10 + rules.growthPercent()) / 100.0);
    }

    /** The figure of a section that use does not change at a station. */
    static Interval bore(RandomRules rules, RandomSection section, int station) {
        double share = (double) (station - section.from()) / (section.to() - section.from());
        return interval(rules, section.start()).towards(interval(rules, section.end()), share);
    }

    static Interval interval(RandomRules rules, RandomFigure figure) {
        return figure.interval(rules.spanBelow(), rules.spanAbove());
    }
}
