/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.figure;

import java.util.Optional;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.rules.Sampling;
import org.ferrule.fit.rules.Span;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Sample;
import org.ferrule.statistics.ToleranceFactor;

/**
 * Turns printed dimensions into intervals under a rule set. "max" is the upper end, "min" the lower, an unmarked or
 * nominal figure the centre; a sample gives mean ± k(n) sd; what is missing comes from the rule set's span.
 */
public final class FigureReader {
    private final RuleSet rules;

    public FigureReader(RuleSet rules) {
        this.rules = rules;
    }

    /**
     * The interval that a printed dimension stands for.
     *
     * @param printed a readable dimension
     * @throws IllegalArgumentException naming the text when it cannot be read
     * @throws RuleSetException when the rule set has no span that is needed
     */
    public ReadFigure read(Dimension printed, FigureClass figure, DeviceKind kind) {
        if (!printed.readable()) {
            throw new IllegalArgumentException("\"" + printed.text() + "\" cannot be read as a dimension");
        }
        Optional<Figure> stated = statedInFull(printed);
        if (stated.isPresent()) {
            return new ReadFigure(stated.get(), printed, Optional.empty());
        }
        Span span = rules.span(figure, kind);
        return new ReadFigure(filled(printed, span), printed, Optional.of(span));
    }

    private Optional<Figure> statedInFull(Dimension printed) {
        Optional<Figure> fromSample = printed.sample().flatMap(this::ofSample);
        if (fromSample.isPresent()) {
            return fromSample;
        }
        if (printed.low().isEmpty() || printed.high().isEmpty()) {
            return Optional.empty();
        }
        Length low = printed.low().get();
        Length high = printed.high().get();
        Length middle = low.plus(high).dividedBy(2);
        return Optional.of(new Figure(low, printed.centre().orElse(middle), high, printed.centre().isEmpty()));
    }

    private Optional<Figure> ofSample(Sample sample) {
        if (sample.n().isEmpty()) {
            return Optional.empty();
        }
        Sampling sampling = rules.sampling().orElseThrow(() -> new RuleSetException("the rule set \"" + rules.title()
                + "\" gives no confidence and coverage, which a sample needs"));
        double factor = ToleranceFactor.oneSided(sample.n().getAsInt(), sampling.confidence().doubleValue(),
                sampling.coverage().doubleValue());
        Length reach = new Length((long) Math.ceil(factor * sample.standardDeviation().thirdNanometres()));
        return Optional.of(new Figure(sample.mean().minus(reach).max(Length.ZERO), sample.mean(),
                sample.mean().plus(reach), false));
    }

    private static Figure filled(Dimension printed, Span span) {
        Length below = span.below();
        Length above = span.above();
        if (printed.centre().isPresent()) {
            Length centre = printed.centre().get();
            return figure(printed.low().orElse(centre.minus(below)), centre, printed.high().orElse(centre.plus(above)),
                    false);
        }
        if (printed.high().isPresent()) {
            Length high = printed.high().get();
            return figure(high.minus(above).minus(below), high.minus(above), high, true);
        }
        Length low = printed.low().orElseThrow(
                () -> new IllegalArgumentException("\"" + printed.text() + "\" states no end and no centre"));
        return figure(low, low.plus(below), low.plus(below).plus(above), true);
    }

    private static Figure figure(Length low, Length centre, Length high, boolean centreAssumed) {
        return new Figure(low.max(Length.ZERO), centre.max(Length.ZERO), high, centreAssumed);
    }
}
