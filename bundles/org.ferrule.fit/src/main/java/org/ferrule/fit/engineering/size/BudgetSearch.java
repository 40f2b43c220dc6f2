/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.LimitingPlaces;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * Works out tolerance budgets for the way in: of a device that passes alone, and of one beside others or through an
 * extension, where all that lies there is round; and of a rigid part in a bend.
 */
public final class BudgetSearch {
    private final FitQuestion question;
    private final PhaseAnswer answer;
    private final Limiting limiting;
    private final FigureReader reader;

    private BudgetSearch(FitQuestion question, PhaseAnswer answer) {
        this.question = question;
        this.answer = answer;
        this.limiting = answer.limiting().orElseThrow();
        this.reader = new FigureReader(question.rules());
    }

    /**
     * The budget; absent unless the answer is "tight" by geometry, of a device as it is before use, between figures
     * that are printed.
     */
    public static Optional<ToleranceBudget> of(FitQuestion question, FitSolver solver) {
        PhaseAnswer answer = solver.answer(question).in(Phase.IN);
        boolean tight = answer.verdict() == Verdict.TIGHT && answer.authority() == Authority.GEOMETRY
                && answer.clearance().isPresent() && answer.limiting().isPresent();
        return tight && !question.conditions().afterInflation()
                ? new BudgetSearch(question, answer).budget(solver)
                : Optional.empty();
    }

    private Optional<ToleranceBudget> budget(FitSolver solver) {
        Length missing = question.requiredClearance().minus(answer.clearance().orElseThrow().worst());
        Optional<SharedSection> beside = beside();
        if (answer.geometry() != Verdict.TIGHT || missing.compareTo(Length.ZERO) <= 0) {
            return BendBudget.of(question, answer, solver);
        }
        return beside.isPresent() ? beside(beside.get(), solver) : alone(missing, solver);
    }

    private Optional<ToleranceBudget> alone(Length missing, FitSolver solver) {
        Optional<Place.Shaft> shaft = LimitingPlaces.shaft(question, limiting);
        Optional<Place.Bore> bore = LimitingPlaces.bore(question, limiting);
        if (shaft.isEmpty() || bore.isEmpty()) {
            return Optional.empty();
        }
        List<Contributor> contributors = contributors(shaft.get(), bore.get(), missing);
        Length spread = contributors.stream().map(Contributor::spread).reduce(Length.ZERO, Length::plus);
        return Optional.of(budget(contributors, missing.minus(spread).max(Length.ZERO), solver));
    }

    /** What lies side by side at the limiting place, where that is more than the device and its own wire. */
    private Optional<SharedSection> beside() {
        return answer.evidence().stream().filter(SharedSection.class::isInstance).map(SharedSection.class::cast)
                .filter(s -> s.members().stream().anyMatch(m -> !m.moving())).findFirst();
    }

    private Optional<ToleranceBudget> beside(SharedSection section, FitSolver solver) {
        List<Giver> givers = Givers.of(question, limiting, section);
        if (givers.isEmpty()) {
            return Optional.empty();
        }
        SharedBudget shared = new SharedBudget(section.members().stream().map(SharedSection.Member::figure).toList(),
                discs -> EnclosingCircle.discs(discs).upperDiameter(), givers,
                answer.clearance().orElseThrow().worst(), question.requiredClearance());
        return Optional.of(budget(shared.contributors(), shared.missingWithoutSpread(), solver));
    }

    private ToleranceBudget budget(List<Contributor> contributors, Length missingWithoutSpread, FitSolver solver) {
        Optional<Verdict> after = missingWithoutSpread.compareTo(Length.ZERO) > 0 ? Optional.empty()
                : Optional.of(solver.answer(Cuts.in(question, contributors)).in(Phase.IN).verdict());
        return new ToleranceBudget(answer.clearance().orElseThrow(), question.requiredClearance(), contributors,
                missingWithoutSpread, after);
    }

    private List<Contributor> contributors(Place.Shaft shaft, Place.Bore bore, Length missing) {
        Length lumenSpread = limiting.lumenDiameter().centre().minus(limiting.lumenDiameter().low());
        Length deviceSpread = limiting.deviceDiameter().high().minus(limiting.deviceDiameter().centre());
        Length wireSpread = wireSpread(shaft).min(deviceSpread);
        Length whole = lumenSpread.plus(deviceSpread);
        List<Contributor> found = new ArrayList<>();
        found.add(contributor(bore, isAssumed(bore.printed(), FigureClass.INNER_DIAMETER, bore.device().kind()),
                lumenSpread, missing, whole));
        if (!wireSpread.equals(Length.ZERO)) {
            Place.Wire wire = new Place.Wire(question.inner().device());
            found.add(contributor(wire, isAssumed(wire.printed(), FigureClass.WIRE_DIAMETER, DeviceKind.GUIDEWIRE),
                    wireSpread, missing, whole));
        }
        found.add(contributor(shaft, isAssumed(shaft.printed(), shaft.figureClass(), shaft.device().kind()),
                deviceSpread.minus(wireSpread), missing, whole));
        return found;
    }

    /** Beside a round shaft the wire adds its own spread; in what other outlines need it has no share of its own. */
    private Length wireSpread(Place.Shaft shaft) {
        boolean round = shaft.section().distal() instanceof Contour.Round;
        return LimitingPlaces.wire(question, answer).filter(w -> round)
                .flatMap(w -> question.inner().wire().diameter()).map(f -> f.high().minus(f.centre()))
                .orElse(Length.ZERO);
    }

    private boolean isAssumed(List<Dimension> printed, FigureClass figures, DeviceKind kind) {
        return printed.stream().anyMatch(d -> reader.read(d, figures, kind).assumedFrom().isPresent());
    }

    private static Contributor contributor(Place place, boolean assumed, Length spread, Length missing, Length whole) {
        return new Contributor(place, assumed, spread, missing, share(spread, missing, whole).min(spread));
    }

    private static Length share(Length spread, Length missing, Length whole) {
        if (whole.equals(Length.ZERO)) {
            return Length.ZERO;
        }
        BigDecimal product = BigDecimal.valueOf(spread.thirdNanometres())
                .multiply(BigDecimal.valueOf(missing.thirdNanometres()));
        return new Length(product.divide(BigDecimal.valueOf(whole.thirdNanometres()), 0, RoundingMode.CEILING)
                .longValueExact());
    }
}
