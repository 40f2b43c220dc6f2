/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * Lays one device of a question out in pieces of which the diameters are drawn, straight from its papers: each printed
 * figure of a section is drawn once for a part. Nothing of the solver's outlines and stretches is used.
 */
final class Parts {
    private final ReadDevice read;
    private final Device device;
    private final Phase phase;
    private final Draws draws;

    /**
     * Lays out a device.
     *
     * @param phase whether it has its outline before or after use
     */
    Parts(ReadDevice read, Phase phase, Draws draws) {
        this.read = read;
        this.device = read.device();
        this.phase = phase;
        this.draws = draws;
    }

    /** One of its lumens, from the proximal entry. */
    List<Piece> lumen(Lumen lumen) {
        long whole = lumen.length().thirdNanometres();
        List<Piece> pieces = new ArrayList<>();
        for (LumenSection section : lumen.sections()) {
            Map<Dimension, ToDoubleFunction<double[]>> drawn = new HashMap<>();
            String where = device.id() + " " + section.name();
            ToDoubleFunction<double[]> start = bore(section.proximal(), where, drawn);
            ToDoubleFunction<double[]> end = bore(section.distal(), where, drawn);
            Piece piece = piece(section.from(), section.to(), start, end, false);
            if (piece.from() < whole) {
                pieces.add(piece.upTo(whole));
            }
        }
        return pieces;
    }

    private ToDoubleFunction<double[]> bore(Optional<Dimension> printed, String where,
            Map<Dimension, ToDoubleFunction<double[]>> drawn) {
        return drawn.computeIfAbsent(known(printed, where), d -> draws.printed(d, Draw.Of.LUMEN, where,
                FigureClass.INNER_DIAMETER, device.kind()));
    }

    /** How long it is. */
    Length whole() {
        return device.statedLength().orElseThrow(() -> new NotComparableException(
                "the length of device \"" + device.id() + "\" is not stated"));
    }

    /** The device with its own wire where that lies beside it, from its tip. */
    List<Solid> solids() {
        Length whole = whole();
        Optional<Length> port = port();
        Optional<ToDoubleFunction<double[]>> wire = port.filter(p -> p.compareTo(whole) < 0).map(p -> wire());
        return solids(port.orElse(whole).thirdNanometres(), wire, whole.thirdNanometres());
    }

    /** Its shaft without a wire beside it, from its tip. */
    List<Solid> shaft() {
        long whole = whole().thirdNanometres();
        return solids(whole, Optional.empty(), whole);
    }

    private List<Solid> solids(long port, Optional<ToDoubleFunction<double[]>> wire, long whole) {
        List<Solid> solids = new ArrayList<>();
        for (ShaftSection section : device.sections()) {
            if (section.from().thirdNanometres() < whole) {
                add(solids, section, port, wire, whole);
            }
        }
        return solids;
    }

    private void add(List<Solid> solids, ShaftSection section, long port, Optional<ToDoubleFunction<double[]>> wire,
            long whole) {
        Outline start = new Outline(section, section.distal(phase), this);
        Outline end = section.distal(phase).equals(section.proximal(phase)) ? start
                : new Outline(section, section.proximal(phase), this);
        Solid alone = solid(section, start, end, Optional.empty()).between(0, whole);
        if (alone.from() < port || port >= section.to().thirdNanometres()) {
            solids.add(alone.between(0, port));
        }
        if (wire.isPresent() && section.to().thirdNanometres() > port && alone.to() > Math.min(port, whole)) {
            solids.add(solid(section, start, end, wire).between(port, whole));
        }
    }

    private static Solid solid(ShaftSection section, Outline start, Outline end,
            Optional<ToDoubleFunction<double[]>> wire) {
        Length from = section.from();
        Length to = section.to();
        Piece whole = wire.map(w -> piece(from, to, start.with(w), end.with(w), true))
                .orElseGet(() -> piece(from, to, start.alone(), end.alone(), true));
        List<Piece> around = new ArrayList<>(List.of(piece(from, to, start.alone(), end.alone(), true)));
        List<Piece> within = new ArrayList<>(List.of(piece(from, to, start.core(), end.core(), true)));
        wire.map(w -> piece(from, to, w, w, true)).ifPresent(beside -> {
            around.add(beside);
            within.add(beside);
        });
        return new Solid(whole, around, within);
    }

    private Optional<Length> port() {
        Optional<Length> side = device.lumens().stream()
                .filter(l -> l.use() == Lumen.Use.WIRE && l.opening() != Lumen.Opening.HUB).map(Lumen::proximalAt)
                .min(Length::compareTo);
        return side.or(() -> device.wireLumen().filter(Lumen::leavesShaft).map(Lumen::proximalAt));
    }

    private ToDoubleFunction<double[]> wire() {
        Figure figure = read.wire().diameter().orElseThrow(
                () -> new NotComparableException("the wire beside device \"" + device.id() + "\" is not stated"));
        return draws.diameter(device.id() + " wire", figure);
    }

    /** A piece; one of no length has its unfavourable end all along. */
    private static Piece piece(Length from, Length to, ToDoubleFunction<double[]> start, ToDoubleFunction<double[]> end,
            boolean shaft) {
        if (from.equals(to) && start != end) {
            ToDoubleFunction<double[]> extreme = drawn -> shaft
                    ? Math.max(start.applyAsDouble(drawn), end.applyAsDouble(drawn))
                    : Math.min(start.applyAsDouble(drawn), end.applyAsDouble(drawn));
            return new Piece(from.thirdNanometres(), to.thirdNanometres(), extreme, extreme);
        }
        return new Piece(from.thirdNanometres(), to.thirdNanometres(), start, end);
    }

    static Dimension known(Optional<Dimension> printed, String where) {
        return printed.filter(Dimension::readable)
                .orElseThrow(() -> new NotComparableException("a diameter is missing: " + where));
    }

    /** How much a section grows by use; absent where it does not. */
    Optional<ToDoubleFunction<double[]>> growth(ShaftSection section) {
        return phase == Phase.IN || section.afterUse() != AfterUse.GROWS ? Optional.empty()
                : Optional.of(draws.growth(section.name() + " growth", device.kind()));
    }

    /** Where its figures are drawn. */
    Draws draws() {
        return draws;
    }

    /** The device. */
    Device device() {
        return device;
    }
}
