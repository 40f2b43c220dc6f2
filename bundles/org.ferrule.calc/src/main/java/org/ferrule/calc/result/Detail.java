/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.result;

import java.math.BigDecimal;
import java.util.List;

/**
 * A named further value of an answer.
 *
 * @param name the name, which ends with the unit where there is one, such as {@code rssLowMm}
 * @param value the value
 */
public record Detail(String name, DetailValue value) {

    /** A number. */
    public static Detail of(String name, BigDecimal value) {
        return new Detail(name, new DetailValue.Number(value));
    }

    /** A text. */
    public static Detail of(String name, String value) {
        return new Detail(name, new DetailValue.Text(value));
    }

    /** Yes or no. */
    public static Detail of(String name, boolean value) {
        return new Detail(name, new DetailValue.Flag(value));
    }

    /** Several numbers. */
    public static Detail numbers(String name, List<BigDecimal> values) {
        return new Detail(name, new DetailValue.Items(
                values.stream().<DetailValue>map(DetailValue.Number::new).toList()));
    }

    /** Several texts. */
    public static Detail texts(String name, List<String> values) {
        return new Detail(name, new DetailValue.Items(
                values.stream().<DetailValue>map(DetailValue.Text::new).toList()));
    }

    /** Several groups. */
    public static Detail groups(String name, List<List<Detail>> groups) {
        return new Detail(name,
                new DetailValue.Items(groups.stream().<DetailValue>map(DetailValue.Group::new).toList()));
    }
}
