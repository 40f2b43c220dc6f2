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
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Sample;

/**
 * Lays a question out in pieces of which the diameters are drawn, straight from the papers of both devices: each printed
 * figure of a section is drawn once for a part. Nothing of the solver's outlines and stretches is used.
 */
final class Parts {
    private final FitQuestion question;
    private final Phase phase;
    private final FigureReader reader;
    private final List<Draw> draws = new ArrayList<>();
    private boolean centreAssumed;

    Parts(FitQuestion question, Phase phase) {
        this.question = question;
        this.phase = question.conditions().afterInflation() ? Phase.OUT : phase;
        this.reader = new FigureReader(question.rules());
    }

    /** What is drawn for a part, in the order of the values. */
    List<Draw> draws() {
        return draws;
    }

    /** Whether a centre is only assumed anywhere. */
    boolean centreAssumed() {
        return centreAssumed;
    }

    /** The lumen, from the end that is entered. */
    List<Piece> lumen() {
        Lumen lumen = question.lumen();
        long whole = lumen.length().thirdNanometres();
        List<Piece> pieces = new ArrayList<>();
        for (LumenSection section : lumen.sections()) {
            Map<Dimension, ToDoubleFunction<double[]>> read = new HashMap<>();
            String where = question.outer().device().id() + " " + section.name();
            ToDoubleFunction<double[]> start = bore(section.proximal(), where, read);
            ToDoubleFunction<double[]> end = bore(section.distal(), where, read);
            Piece piece = piece(section.from(), section.to(), start, end, false);
            if (piece.from() < whole) {
                pieces.add(piece.upTo(whole));
            }
        }
        return directed(pieces, whole);
    }

    private ToDoubleFunction<double[]> bore(Optional<Dimension> printed, String where,
            Map<Dimension, ToDoubleFunction<double[]>> read) {
        return read.computeIfAbsent(known(printed, where), d -> drawn(d, Draw.Of.LUMEN, where,
                FigureClass.INNER_DIAMETER, question.outer().device().kind()));
    }

    /** The device with its own wire where that lies beside it, from the end that leads. */
    List<Piece> device() {
        Device device = question.inner().device();
        Length whole = device.statedLength().orElseThrow(() -> new NotComparableException(
                "the length of device \"" + device.id() + "\" is not stated"));
        Optional<Length> port = port(device);
        Optional<ToDoubleFunction<double[]>> wire = port.filter(p -> p.compareTo(whole) < 0).map(p -> wire(device));
        List<Piece> pieces = new ArrayList<>();
        for (ShaftSection section : device.sections()) {
            if (section.from().compareTo(whole) < 0) {
                add(pieces, section, port.orElse(whole).thirdNanometres(), wire, whole.thirdNanometres());
            }
        }
        return directed(pieces, whole.thirdNanometres());
    }

    private void add(List<Piece> pieces, ShaftSection section, long port, Optional<ToDoubleFunction<double[]>> wire,
            long whole) {
        Outline start = new Outline(section, section.distal(phase), this);
        Outline end = section.distal(phase).equals(section.proximal(phase)) ? start
                : new Outline(section, section.proximal(phase), this);
        Piece alone = piece(section.from(), section.to(), start.alone(), end.alone(), true).upTo(whole);
        if (alone.from() < port || port >= section.to().thirdNanometres()) {
            pieces.add(alone.upTo(port));
        }
        if (wire.isPresent() && section.to().thirdNanometres() > port && alone.to() > Math.min(port, whole)) {
            pieces.add(piece(section.from(), section.to(), start.with(wire.get()), end.with(wire.get()), true)
                    .upTo(whole).from(port));
        }
    }

    private static Optional<Length> port(Device device) {
        Optional<Length> side = device.lumens().stream()
                .filter(l -> l.use() == Lumen.Use.WIRE && l.opening() != Lumen.Opening.HUB).map(Lumen::proximalAt)
                .min(Length::compareTo);
        return side.or(() -> device.wireLumen().filter(Lumen::leavesShaft).map(Lumen::proximalAt));
    }

    private ToDoubleFunction<double[]> wire(Device device) {
        Figure figure = question.inner().wire().diameter().orElseThrow(
                () -> new NotComparableException("the wire beside device \"" + device.id() + "\" is not stated"));
        return add(Draw.diameter(Draw.Of.SHAFT, device.id() + " wire", figure, Optional.empty()),
                figure.centreAssumed());
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

    private List<Piece> directed(List<Piece> pieces, long whole) {
        return question.direction() == Direction.TIP_FIRST ? pieces
                : pieces.stream().map(p -> p.reversed(whole)).toList();
    }

    static Dimension known(Optional<Dimension> printed, String where) {
        return printed.filter(Dimension::readable)
                .orElseThrow(() -> new NotComparableException("a diameter is missing: " + where));
    }

    /** A printed figure, drawn once for each part. */
    ToDoubleFunction<double[]> drawn(Dimension printed, Draw.Of of, String where, FigureClass figures,
            DeviceKind kind) {
        Figure figure = reader.read(printed, figures, kind).figure();
        return add(Draw.diameter(of, where, figure, printed.sample().map(Sample::standardDeviation)),
                figure.centreAssumed());
    }

    /** How much a folded balloon grows, drawn once for each part; absent where the section does not grow. */
    Optional<ToDoubleFunction<double[]>> growth(ShaftSection section) {
        if (phase == Phase.IN || section.afterUse() != AfterUse.GROWS) {
            return Optional.empty();
        }
        AfterUseRule rule = question.rules().growth(question.inner().device().kind());
        return Optional.of(add(Draw.growth(section.name() + " growth", rule.low(), rule.centre(), rule.high()), true));
    }

    private ToDoubleFunction<double[]> add(Draw draw, boolean assumed) {
        int index = draws.size();
        draws.add(draw);
        centreAssumed |= assumed;
        return drawn -> drawn[index];
    }

    Device inner() {
        return question.inner().device();
    }
}
