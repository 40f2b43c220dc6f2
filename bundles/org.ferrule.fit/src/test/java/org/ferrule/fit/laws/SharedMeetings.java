/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.laws.RandomFigure.Interval;

/**
 * Everything that meets in a passage beside others, worked out step by step, without the kernel: in every step of the
 * lumen, every part of the device that comes there, with every part of the others that lies all along that step.
 */
final class SharedMeetings {
    private final RandomShared shared;
    private final RandomPassage passage;
    private final Phase phase;
    private final Visitor visitor;

    /** Is told what meets. */
    interface Visitor {
        /**
         * Discs lie side by side at a station of a lumen.
         *
         * @param surely whether they do, and not only touch at the very end of the travel
         */
        void meet(Interval lumen, List<Interval> discs, boolean surely);
    }

    private SharedMeetings(RandomShared shared, Phase phase, Visitor visitor) {
        this.shared = shared;
        this.passage = shared.passage();
        this.phase = phase;
        this.visitor = visitor;
    }

    static void visit(RandomShared shared, Phase phase, Visitor visitor) {
        SharedMeetings meetings = new SharedMeetings(shared, phase, visitor);
        for (RandomSection bore : shared.passage().bore()) {
            for (int step = bore.from(); step < bore.to(); step++) {
                meetings.pass(bore, step);
            }
        }
    }

    private void pass(RandomSection bore, int step) {
        List<List<Part>> beside = List.of(List.of());
        for (RandomOccupant occupant : shared.occupants()) {
            List<Part> there = partsOf(occupant, step);
            if (!there.isEmpty()) {
                beside = beside.stream().flatMap(b -> there.stream().map(p -> plus(b, p))).toList();
            }
        }
        for (List<Part> others : beside) {
            for (Part moving : parts(passage.shaft(), passage.port(), phase)) {
                meet(bore, step, moving, others);
            }
        }
    }

    private static List<Part> plus(List<Part> some, Part another) {
        List<Part> more = new ArrayList<>(some);
        more.add(another);
        return more;
    }

    /** A part of a section on one side of the port. */
    private record Part(RandomSection section, int from, int to, boolean wire, RandomFigure ownWire, int tipAt,
            Phase outline) {
    }

    private List<Part> parts(List<RandomSection> shaft, int port, Phase outline) {
        return parts(shaft, port, passage.wire(), 0, outline);
    }

    private static List<Part> parts(List<RandomSection> shaft, int port, RandomFigure wire, int tipAt,
            Phase outline) {
        List<Part> parts = new ArrayList<>();
        for (RandomSection section : shaft) {
            int cut = port == RandomPassage.NONE ? section.to()
                    : Math.max(section.from(), Math.min(section.to(), port));
            if (cut > section.from()) {
                parts.add(new Part(section, section.from(), cut, false, wire, tipAt, outline));
            }
            if (cut < section.to()) {
                parts.add(new Part(section, cut, section.to(), true, wire, tipAt, outline));
            }
        }
        return parts;
    }

    private List<Part> partsOf(RandomOccupant occupant, int step) {
        int tipAt = passage.boreLength() + occupant.tipAhead();
        Phase outline = occupant.used() ? Phase.OUT : phase;
        return parts(occupant.shaft(), occupant.port(), occupant.wire(), tipAt, outline).stream()
                .filter(p -> tipAt - p.to() <= step && tipAt - p.from() >= step + 1).toList();
    }

    private void meet(RandomSection bore, int step, Part moving, List<Part> others) {
        for (int x = step; x <= step + 1; x++) {
            for (int s = moving.from(); s <= moving.to() && s + x <= passage.travel(); s++) {
                boolean surely = step + moving.from() < passage.travel();
                visitor.meet(BruteForce.bore(passage.rules(), bore, x), across(x, s, moving, others), surely);
            }
        }
    }

    private List<Interval> across(int x, int s, Part moving, List<Part> others) {
        List<Interval> discs = new ArrayList<>(discs(moving, s));
        others.forEach(p -> discs.addAll(discs(p, p.tipAt() - x)));
        return discs;
    }

    private List<Interval> discs(Part part, int s) {
        Interval shaft = BruteForce.outline(passage.rules(), part.section(), s, part.outline());
        return part.wire() ? List.of(shaft, BruteForce.interval(passage.rules(), part.ownWire())) : List.of(shaft);
    }
}
