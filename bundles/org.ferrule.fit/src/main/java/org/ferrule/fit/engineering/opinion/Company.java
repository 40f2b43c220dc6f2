/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.Through;

/**
 * The way of a device that does not pass alone, laid out from the papers of all devices: the outer lumen, between the
 * collar and the opening of an extension that one's, and all along what lies there.
 */
final class Company {

    /**
     * A device that lies there.
     *
     * @param solids what it consists of, from its tip
     * @param tipAt where its tip lies, from the proximal entry of the way
     */
    record Lying(List<Solid> solids, long tipAt) {

        /** What of it lies all along a stretch of the way in which no end of it lies. */
        List<Placed> in(long from, long to) {
            return solids.stream().filter(s -> tipAt - s.to() < to && tipAt - s.from() > from)
                    .map(s -> new Placed(s, tipAt)).toList();
        }

        Stream<Long> ends() {
            return solids.stream().flatMap(s -> Stream.of(tipAt - s.to(), tipAt - s.from()));
        }
    }

    /** A piece of a device that lies there. */
    record Placed(Solid solid, long tipAt) {
    }

    /**
     * A stretch of the way.
     *
     * @param lumen the piece of the lumen
     * @param beside what lies in it all along
     */
    record Stretch(Piece lumen, List<Placed> beside) {
    }

    private final FitQuestion question;
    private final Phase phase;
    private final Draws draws;
    private final long whole;

    private Company(FitQuestion question, Phase phase, Draws draws) {
        this.question = question;
        this.phase = phase;
        this.draws = draws;
        this.whole = question.lumen().length().thirdNanometres();
    }

    static List<Stretch> along(FitQuestion question, Phase phase, Draws draws) {
        return new Company(question, phase, draws).stretches();
    }

    private List<Stretch> stretches() {
        Conditions conditions = question.conditions();
        List<Piece> outer = new Parts(question.outer(), phase, draws).lumen(question.lumen());
        List<Lying> inside = conditions.inside().stream().map(this::lying).toList();
        Optional<Through> through = conditions.through();
        return through.isEmpty() ? cut(outer, inside) : through(through.get(), outer, inside);
    }

    private Lying lying(Occupant occupant) {
        Parts parts = new Parts(occupant.device(), occupant.used() ? Phase.OUT : phase, draws);
        return new Lying(parts.solids(), whole + occupant.tipAhead().thirdNanometres());
    }

    private List<Stretch> through(Through through, List<Piece> outer, List<Lying> inside) {
        Parts extension = new Parts(through.extension(), phase, draws);
        long tipAt = whole + through.protrusion().thirdNanometres();
        long collar = tipAt - through.lumen().proximalAt().thirdNanometres();
        long opening = tipAt - through.lumen().distalAt().thirdNanometres();
        List<Piece> tube = extension.lumen(through.lumen()).stream().map(p -> p.movedBy(collar)).toList();
        List<Lying> withRod = new ArrayList<>(inside);
        withRod.add(new Lying(extension.shaft(), tipAt));
        return Stream.of(cut(part(outer, 0, collar), withRod), cut(part(tube, 0, opening), inside),
                cut(part(outer, opening, whole), withRod)).flatMap(List::stream).toList();
    }

    private static List<Piece> part(List<Piece> pieces, long from, long to) {
        return pieces.stream().filter(p -> p.to() > from && p.from() < to).map(p -> p.from(from).upTo(to)).toList();
    }

    private static List<Stretch> cut(List<Piece> lumen, List<Lying> devices) {
        List<Stretch> stretches = new ArrayList<>();
        for (Piece piece : lumen) {
            TreeSet<Long> cuts = new TreeSet<>(List.of(piece.from(), piece.to()));
            devices.stream().flatMap(Lying::ends).filter(x -> x > piece.from() && x < piece.to()).forEach(cuts::add);
            List<Long> ends = new ArrayList<>(cuts);
            for (int i = 0; i + 1 < ends.size(); i++) {
                Piece here = piece.from(ends.get(i)).upTo(ends.get(i + 1));
                together(here, devices).forEach(beside -> stretches.add(new Stretch(here, beside)));
            }
        }
        return stretches;
    }

    /** Of each device one of the pieces that lie there. */
    private static List<List<Placed>> together(Piece here, List<Lying> devices) {
        List<List<Placed>> together = List.of(List.of());
        for (Lying device : devices) {
            List<Placed> there = device.in(here.from(), here.to());
            if (!there.isEmpty()) {
                together = together.stream().flatMap(some -> there.stream()
                        .map(one -> Stream.concat(some.stream(), Stream.of(one)).toList())).toList();
            }
        }
        return together;
    }
}
