/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.Optional;
import java.util.function.Function;

import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.FitCell.LimitingPlace;
import org.ferrule.quantity.Length;

/** Which clearance the cells of a chart show. */
public enum ShownNumber {
    /** In the worst case. */
    WORST(LimitingPlace::worst),
    /** Nominal. */
    NOMINAL(LimitingPlace::nominal),
    /** None. */
    NONE(place -> null);

    private final Function<LimitingPlace, Length> number;

    ShownNumber(Function<LimitingPlace, Length> number) {
        this.number = number;
    }

    /** The clearance that is shown of a cell; empty for none. */
    public Optional<Length> of(FitCell cell) {
        return cell.limiting().map(number);
    }
}
