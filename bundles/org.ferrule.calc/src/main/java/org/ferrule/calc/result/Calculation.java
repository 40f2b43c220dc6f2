/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.result;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The answer of a calculator.
 *
 * @param what what the value is, in words
 * @param value the value, rounded to the careful side; none when it is refused
 * @param unit the unit of value and interval as a UCUM code, {@code 1} for a bare number
 * @param interval what the value lies between, where that is known or means something
 * @param basis what the answer rests on
 * @param details further values, each with a name of its own
 * @param refusal why there is no value
 */
public record Calculation(String what, Optional<BigDecimal> value, String unit, Optional<Interval> interval,
        Basis basis, List<Detail> details, Optional<Refusal> refusal) {

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there are both a value and a refusal, or neither
     */
    public Calculation {
        if (value.isPresent() == refusal.isPresent()) {
            throw new IllegalArgumentException("either a value or a refusal: " + value + ", " + refusal);
        }
        details = List.copyOf(details);
    }

    /** An answer with a value. */
    public static Calculation of(String what, BigDecimal value, String unit, Basis basis) {
        return new Calculation(what, Optional.of(value), unit, Optional.empty(), basis, List.of(), Optional.empty());
    }

    /** An answer without a value. */
    public static Calculation refused(String what, Refusal refusal, String unit, Basis basis) {
        return new Calculation(what, Optional.empty(), unit, Optional.empty(), basis, List.of(), Optional.of(refusal));
    }

    /** Returns this answer with an interval. */
    public Calculation within(BigDecimal low, BigDecimal high) {
        return new Calculation(what, value, unit, Optional.of(new Interval(low, high)), basis, details, refusal);
    }

    /** Returns this answer with further details. */
    public Calculation with(Detail... more) {
        List<Detail> all = Stream.concat(details.stream(), Stream.of(more)).toList();
        return new Calculation(what, value, unit, interval, basis, all, refusal);
    }

    /** Returns the detail with that name. */
    public Optional<DetailValue> detail(String name) {
        return details.stream().filter(detail -> detail.name().equals(name)).map(Detail::value).findFirst();
    }
}
