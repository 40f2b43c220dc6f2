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
import org.ferrule.fit.engineering.change.DeviceChange;
import org.ferrule.fit.engineering.change.LimitingPlaces;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.change.Replacement;
import org.ferrule.fit.engineering.change.Reprint;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.figure.ReadFigure;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Works out tolerance budgets, for the way in of a device that passes alone. */
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
     * The budget; absent unless the answer is "tight" by geometry and the device passes alone, between sections that
     * are printed.
     */
    public static Optional<ToleranceBudget> of(FitQuestion question, FitSolver solver) {
        PhaseAnswer answer = solver.answer(question).in(Phase.IN);
        boolean tight = answer.verdict() == Verdict.TIGHT && answer.authority() == Authority.GEOMETRY
                && answer.geometry() == Verdict.TIGHT && answer.clearance().isPresent();
        return tight && question.conditions().alone() && !question.conditions().afterInflation()
                ? new BudgetSearch(question, answer).budget(solver)
                : Optional.empty();
    }

    private Optional<ToleranceBudget> budget(FitSolver solver) {
        Optional<Place.Shaft> shaft = LimitingPlaces.shaft(question, limiting);
        Optional<Place.Bore> bore = LimitingPlaces.bore(question, limiting);
        Length required = question.requiredClearance();
        Length missing = required.minus(answer.clearance().orElseThrow().worst());
        if (shaft.isEmpty() || bore.isEmpty() || missing.compareTo(Length.ZERO) <= 0) {
            return Optional.empty();
        }
        List<Contributor> contributors = contributors(shaft.get(), bore.get(), missing);
        Length spread = contributors.stream().map(Contributor::spread).reduce(Length.ZERO, Length::plus);
        Optional<Verdict> after = spread.compareTo(missing) < 0 ? Optional.empty()
                : Optional.of(after(contributors, solver));
        return Optional.of(new ToleranceBudget(answer.clearance().get(), required, contributors, after));
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

    /** Asks the solver with all intervals cut; the wire's first, while the device is still the one that was asked of. */
    private Verdict after(List<Contributor> contributors, FitSolver solver) {
        FitQuestion cut = question;
        for (Contributor contributor : contributors) {
            cut = cut(contributor).in(cut);
        }
        return solver.answer(cut).in(Phase.IN).verdict();
    }

    private Replacement cut(Contributor contributor) {
        Length by = contributor.shared();
        if (contributor.place() instanceof Place.Bore bore) {
            return Replacement.of(bore.device(), DeviceChange.of(bore, printed -> printed.map(d -> narrower(
                    reader.read(d, FigureClass.INNER_DIAMETER, bore.device().kind()), by, Length.ZERO))),
                    question.rules());
        }
        if (contributor.place() instanceof Place.Shaft shaft) {
            return Replacement.of(shaft.device(), DeviceChange.of(shaft, contour -> DeviceChange.eachFigure(contour,
                    d -> narrower(reader.read(d, shaft.figureClass(), shaft.device().kind()), Length.ZERO, by))),
                    question.rules());
        }
        return wireCut(by);
    }

    private static Dimension narrower(ReadFigure read, Length below, Length above) {
        Figure figure = read.figure();
        return Reprint.within(figure.low().plus(below).min(figure.centre()), figure.centre(),
                figure.high().minus(above).max(figure.centre()));
    }

    private Replacement wireCut(Length by) {
        OwnWire wire = question.inner().wire();
        Figure figure = wire.diameter().orElseThrow();
        Figure cut = new Figure(figure.low(), figure.centre(), figure.high().minus(by).max(figure.centre()),
                figure.centreAssumed());
        return Replacement.ofWire(question.inner().device(), new OwnWire(Optional.of(cut), wire.label(), wire.device()),
                question.rules());
    }
}
