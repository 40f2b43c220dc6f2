/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.renal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.thresholds.Scale;
import org.ferrule.thresholds.Scale.Unit;
import org.ferrule.thresholds.Source;
import org.ferrule.thresholds.Threshold;

/**
 * A limit of the volume of contrast medium: a factor times some figures of the patient over others. What was found beyond
 * a limit holds for the groups of a study; nothing is told of the one who lies on the table.
 *
 * @param id its word, by which settings and texts name it
 * @param factor the factor in mL and the units of the figures, and whether the limit itself counts as reached
 * @param times the figures that it is multiplied by
 * @param over the figures that it is divided by
 * @param capMl the largest limit, whatever the figures
 * @param source where it was published
 */
public record ContrastLimit(String id, Threshold factor, List<RenalFigure> times, List<RenalFigure> over,
        Optional<BigDecimal> capMl, Source source) {
    /** How a volume of contrast medium is read, in mL. */
    public static final Scale VOLUME = Scale.of("volume of contrast medium", "0", "3000", Unit.base("mL"));
    private static final MathContext DOWN = new MathContext(16, RoundingMode.FLOOR);

    /** Copies the lists. */
    public ContrastLimit {
        times = List.copyOf(times);
        over = List.copyOf(over);
    }

    /** A multiple of one figure. */
    public static ContrastLimit ratio(String id, Threshold factor, RenalFigure figure, Source source) {
        return new ContrastLimit(id, factor, List.of(figure), List.of(), Optional.empty(), source);
    }

    /** Returns the figures that are needed and not given. */
    public List<RenalFigure> missing(Map<RenalFigure, BigDecimal> given) {
        return Stream.concat(times.stream(), over.stream()).filter(figure -> !given.containsKey(figure)).toList();
    }

    /**
     * Returns the limit in mL, rounded down to 16 digits, or empty where a figure is missing.
     *
     * @param given the figures in the units of their scales
     * @throws IllegalArgumentException naming a figure that is not plausible
     */
    public Optional<BigDecimal> limitMl(Map<RenalFigure, BigDecimal> given) {
        return uncapped(given).map(limit -> capMl.map(limit::min).orElse(limit));
    }

    /** Tells whether the cap and not the figures make the limit. */
    public boolean isCapped(Map<RenalFigure, BigDecimal> given) {
        return uncapped(given).flatMap(limit -> capMl.filter(cap -> limit.compareTo(cap) > 0)).isPresent();
    }

    private Optional<BigDecimal> uncapped(Map<RenalFigure, BigDecimal> given) {
        return missing(given).isEmpty() ? Optional.of(
                factor.value().multiply(product(times, given)).divide(product(over, given), DOWN)) : Optional.empty();
    }

    /** Tells whether a volume has reached the limit; empty where a figure is missing. */
    public Optional<Boolean> isReachedBy(BigDecimal volumeMl, Map<RenalFigure, BigDecimal> given) {
        return limitMl(given).map(limit -> new Threshold(limit, factor.included()).isReachedBy(volumeMl));
    }

    private static BigDecimal product(List<RenalFigure> figures, Map<RenalFigure, BigDecimal> given) {
        return figures.stream().map(figure -> figure.scale().check(given.get(figure))).reduce(BigDecimal.ONE,
                BigDecimal::multiply);
    }
}
