/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.result;

import java.math.BigDecimal;
import java.util.List;

/** A further value of an answer. */
public sealed interface DetailValue {

    /** A number, in the unit that the name of the detail ends with. */
    record Number(BigDecimal value) implements DetailValue {
    }

    /** A text. */
    record Text(String value) implements DetailValue {
    }

    /** Yes or no. */
    record Flag(boolean value) implements DetailValue {
    }

    /** Several values, each of the same make. */
    record Items(List<DetailValue> values) implements DetailValue {
        /** Copies the list. */
        public Items {
            values = List.copyOf(values);
        }
    }

    /** Named values that belong together. */
    record Group(List<Detail> values) implements DetailValue {
        /** Copies the list. */
        public Group {
            values = List.copyOf(values);
        }
    }
}
