/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Taper;
import org.ferrule.quantity.Length;

/**
 * A diameter of a device along its length.
 *
 * @param kind which diameter
 * @param name of the lumen; empty for outer diameters
 * @param pieces from distal to proximal; they may overlap, and need not touch
 */
public record Curve(Kind kind, String name, List<Piece> pieces) {

    /** Which diameter a curve is of. */
    public enum Kind {
        /** Of the shaft alone. */
        OUTER,
        /** Of the circle round the shaft and its own wire, where that lies beside the shaft. */
        WITH_WIRE,
        /** Of a lumen. */
        INNER;

        /** Which way a diameter is rounded at a third of a nanometre where it tapers: lumens down, others up. */
        RoundingMode rounding() {
            return this == INNER ? RoundingMode.FLOOR : RoundingMode.CEILING;
        }
    }

    public Curve {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(name, "name");
        pieces = List.copyOf(pieces);
    }

    /**
     * What it says of a station. Where pieces meet or overlap the largest outer diameter counts, and the smallest inner
     * one; if one of them is unknown, so is the answer.
     */
    public Reading at(Length station) {
        List<Piece> there = pieces.stream().filter(piece -> piece.touches(station)).toList();
        if (there.isEmpty()) {
            return new Reading.Beyond();
        }
        Optional<Piece> unknown = there.stream().filter(piece -> piece.diameter().isEmpty()).findFirst();
        return unknown.<Reading>map(piece -> new Reading.Unknown(piece.section(), piece.notes()))
                .orElseGet(() -> known(there, station));
    }

    private Reading known(List<Piece> there, Length station) {
        Figure figure = figure(there.get(0), station);
        Piece deciding = there.get(0);
        for (Piece piece : there) {
            Figure here = figure(piece, station);
            int difference = here.centre().compareTo(figure(deciding, station).centre());
            deciding = difference != 0 && difference > 0 == (kind != Kind.INNER) ? piece : deciding;
            figure = kind == Kind.INNER ? figure.min(here) : figure.max(here);
        }
        boolean assumed = there.stream().anyMatch(Piece::isAssumed);
        return new Reading.Known(figure, assumed, deciding.section(), deciding.source());
    }

    private Figure figure(Piece piece, Length station) {
        return piece.at(station, kind.rounding()).orElseThrow();
    }

    /**
     * The figure at an end of a stretch in which no piece begins or ends, as it is inside that stretch; absent when it
     * is not known there, or when there is nothing.
     */
    Optional<Figure> inside(Length station, Length from, Length to) {
        List<Piece> over = over(from, to);
        boolean unknown = over.isEmpty() || over.stream().anyMatch(piece -> piece.diameter().isEmpty());
        return unknown ? Optional.empty()
                : over.stream().flatMap(piece -> piece.at(station, kind.rounding()).stream())
                        .reduce(kind == Kind.INNER ? Figure::min : Figure::max);
    }

    private List<Piece> over(Length from, Length to) {
        return pieces.stream()
                .filter(piece -> piece.from().compareTo(from) <= 0 && piece.to().compareTo(to) >= 0).toList();
    }

    /** The curve cut where any piece begins or ends, from distal to proximal: spans never overlap. */
    public List<Span> spans() {
        TreeSet<Length> borders = new TreeSet<>();
        pieces.forEach(piece -> borders.addAll(List.of(piece.from(), piece.to())));
        List<Length> ends = List.copyOf(borders);
        List<Span> spans = new ArrayList<>();
        for (int i = 1; i < ends.size(); i++) {
            List<Piece> over = over(ends.get(i - 1), ends.get(i));
            if (!over.isEmpty()) {
                spans.add(span(ends.get(i - 1), ends.get(i), over));
            }
        }
        return List.copyOf(spans);
    }

    private Span span(Length from, Length to, List<Piece> over) {
        Optional<Taper> taper = inside(from, from, to)
                .flatMap(start -> inside(to, from, to).map(end -> new Taper(start, end)));
        return new Span(from, to, taper, over.stream().anyMatch(Piece::isAssumed));
    }

    /** Whether all of its pieces are known. */
    public boolean isKnown() {
        return !pieces.isEmpty() && pieces.stream().allMatch(piece -> piece.diameter().isPresent());
    }

    /** Of an outer diameter the largest, of an inner one the smallest, end by end; absent when a part is unknown. */
    public Optional<Figure> extreme() {
        if (!isKnown()) {
            return Optional.empty();
        }
        return pieces.stream().flatMap(piece -> piece.diameter().stream()).map(this::extreme)
                .reduce(kind == Kind.INNER ? Figure::min : Figure::max);
    }

    private Figure extreme(Taper taper) {
        return kind == Kind.INNER ? taper.smallest() : taper.largest();
    }

    /** The first station, from the distal end, with the largest centre of all; absent when a part is unknown. */
    public Optional<Length> largestAt() {
        Optional<Length> largest = extreme().map(Figure::centre).filter(centre -> kind != Kind.INNER);
        return largest.flatMap(size -> pieces.stream().flatMap(piece -> stationOf(piece, size).stream())
                .min(Length::compareTo));
    }

    private static Optional<Length> stationOf(Piece piece, Length size) {
        Taper taper = piece.diameter().orElseThrow();
        if (taper.start().centre().equals(size)) {
            return Optional.of(piece.from());
        }
        return taper.end().centre().equals(size) ? Optional.of(piece.to()) : Optional.empty();
    }
}
