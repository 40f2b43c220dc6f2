/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.random.RandomGenerator;

import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * Something that differs from part to part: a diameter in thirds of a nanometre, or a factor by which a balloon grows.
 *
 * @param of what it is
 * @param where the device and the section, for people
 * @param low the smallest it can be
 * @param centre the usual value
 * @param high the largest it can be
 * @param deviation the standard deviation of a normal distribution that is cut off at both ends; absent: every value
 *                  between the ends is as likely as the other
 */
record Draw(Of of, String where, double low, double centre, double high, Optional<Double> deviation) {

    /** What is drawn. */
    enum Of {
        LUMEN, SHAFT, GROWTH
    }

    Draw {
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(deviation, "deviation");
    }

    static Draw diameter(Of of, String where, Figure figure, Optional<Length> deviation) {
        return new Draw(of, where, figure.low().thirdNanometres(), figure.centre().thirdNanometres(),
                figure.high().thirdNanometres(), deviation.map(sd -> (double) sd.thirdNanometres()));
    }

    static Draw growth(String where, BigDecimal low, BigDecimal centre, BigDecimal high) {
        return new Draw(Of.GROWTH, where, low.doubleValue(), centre.doubleValue(), high.doubleValue(),
                Optional.empty());
    }

    /** The end that leaves the least room. */
    double worst() {
        return of == Of.LUMEN ? low : high;
    }

    /** A value between the ends. Candidates for a normal one are kept as often as they are likely. */
    double from(RandomGenerator random) {
        double value = low + random.nextDouble() * (high - low);
        if (deviation.isEmpty() || deviation.get() == 0 || low == high) {
            return deviation.filter(sd -> sd == 0).isPresent() ? centre : value;
        }
        while (random.nextDouble() > likelihood(value)) {
            value = low + random.nextDouble() * (high - low);
        }
        return value;
    }

    private double likelihood(double value) {
        double deviations = (value - centre) / deviation.orElseThrow();
        return Math.exp(-deviations * deviations / 2);
    }
}
