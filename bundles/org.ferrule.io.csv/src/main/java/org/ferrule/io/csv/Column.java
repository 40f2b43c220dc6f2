/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

import java.util.function.Function;

/**
 * A column of the file with a row for every pair.
 *
 * @param title in the first row
 * @param value of a pair, as it is written
 */
record Column(String title, Function<Pair, String> value) {

    /** A column of text. */
    static Column text(String title, Function<Pair, String> value) {
        return new Column(title, pair -> CellText.text(value.apply(pair)));
    }

    /** A column of numbers. */
    static Column number(String title, Function<Pair, String> value) {
        return new Column(title, value);
    }
}
