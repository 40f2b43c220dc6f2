/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.figure.ReadFigure;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.geometry.RigidInBend;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * The tolerance budget of a rigid part that is tight in a bend only: of the narrowest section of the lumen and of the
 * section that is thickest. Nothing else lies in the lumen, and no wire beside the part.
 */
final class BendBudget {
    private final FitQuestion question;
    private final BendRoom room;
    private final FigureReader reader;

    private BendBudget(FitQuestion question, BendRoom room) {
        this.question = question;
        this.room = room;
        this.reader = new FigureReader(question.rules());
    }

    /** The budget of the tightest part; absent where the figures that decide are not found in the papers. */
    static Optional<ToleranceBudget> of(FitQuestion question, PhaseAnswer answer, FitSolver solver) {
        return !question.conditions().inside().isEmpty() ? Optional.empty()
                : answer.evidence().stream().filter(BendRoom.class::isInstance).map(BendRoom.class::cast)
                        .filter(r -> r.freeLumen().filter(l -> l.compareTo(r.bendRadius()) <= 0).isPresent())
                        .min(Comparator.comparing(BendBudget::clearance))
                        .flatMap(r -> new BendBudget(question, r).budget(solver));
    }

    private static Length clearance(BendRoom room) {
        return room.freeLumen().orElseThrow().minus(needed(room, room.deviceDiameter()));
    }

    private static Length needed(BendRoom room, Length diameter) {
        return RigidInBend.lumenNeeded(diameter, room.rigidLength(), room.bendRadius());
    }

    private Optional<ToleranceBudget> budget(FitSolver solver) {
        Optional<Found<Place.Bore>> bore = bore();
        Optional<Found<Place.Shaft>> shaft = shaft();
        Length required = required();
        boolean tight = clearance(room).compareTo(required) < 0;
        return tight && bore.isPresent() && shaft.isPresent() ? Optional.of(budget(bore.get(), shaft.get(), solver))
                : Optional.empty();
    }

    private ToleranceBudget budget(Found<Place.Bore> bore, Found<Place.Shaft> shaft, FitSolver solver) {
        Figure lumen = bore.read().figure();
        Figure device = shaft.read().figure();
        List<Giver> givers = List.of(
                new Giver(bore.place(), bore.isAssumed(), lumen.centre().minus(lumen.low()), List.of()),
                new Giver(shaft.place(), shaft.isAssumed(), device.high().minus(device.centre()), List.of(0)));
        SharedBudget shared = new SharedBudget(List.of(device), discs -> needed(room, discs.get(0)), givers,
                clearance(room), required());
        Clearance clearance = new Clearance(clearance(room), lumen.centre().minus(needed(room, device.centre())),
                lumen.high().minus(needed(room, device.low())));
        List<Contributor> contributors = shared.contributors();
        Optional<Verdict> after = shared.missingWithoutSpread().compareTo(Length.ZERO) > 0 ? Optional.empty()
                : Optional.of(solver.answer(Cuts.in(question, contributors)).in(Phase.IN).verdict());
        return new ToleranceBudget(clearance, required(), contributors, shared.missingWithoutSpread(), after);
    }

    /** In an extension that one's kind decides. */
    private Length required() {
        return question.conditions().through()
                .map(t -> question.rules().clearance(t.extension().device().kind(), question.inner().device().kind())
                        .required())
                .orElseGet(question::requiredClearance);
    }

    /** A place in the papers with what is read there. */
    private record Found<P extends Place>(P place, ReadFigure read) {
        boolean isAssumed() {
            return read.assumedFrom().isPresent();
        }
    }

    private Optional<Found<Place.Bore>> bore() {
        Device device = question.conditions().through().map(t -> t.extension().device())
                .orElse(question.outer().device());
        Lumen lumen = question.conditions().through().map(t -> t.lumen()).orElse(question.lumen());
        return IntStream.range(0, lumen.sections().size()).mapToObj(i -> new Place.Bore(device, lumen, i))
                .flatMap(p -> p.printed().stream().map(d -> new Found<>(p, read(d, FigureClass.INNER_DIAMETER,
                        device.kind()))))
                .filter(f -> f.read().figure().low().equals(room.freeLumen().orElseThrow())).findFirst();
    }

    private Optional<Found<Place.Shaft>> shaft() {
        Device device = question.inner().device();
        return IntStream.range(0, device.sections().size()).mapToObj(i -> new Place.Shaft(device, i))
                .filter(p -> p.section().rigid() && p.section().distal() instanceof Contour.Round)
                .flatMap(p -> p.printed().stream().map(d -> new Found<>(p, read(d, p.figureClass(), device.kind()))))
                .filter(f -> f.read().figure().high().equals(room.deviceDiameter())).findFirst();
    }

    private ReadFigure read(Dimension printed, FigureClass figures, DeviceKind kind) {
        return reader.read(printed, figures, kind);
    }
}
