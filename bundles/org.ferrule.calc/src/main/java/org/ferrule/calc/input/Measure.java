/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

import java.util.regex.Pattern;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.QuantitySyntaxException;

/** Something that was measured, of a kind that its unit tells. */
public sealed interface Measure {

    /** A length. */
    record OfLength(Length length) implements Measure {
    }

    /** A pressure. */
    record OfPressure(Pressure pressure) implements Measure {
    }

    /** A gauge of needles or tubes, which is the number of a row in a table that is not named. */
    record OfGauge(String text) implements Measure {
    }

    /** The kind of value. */
    static ValueKind<Measure> kind() {
        return ValueKind.unordered(Form.MEASURE, "0.070 in, 6 Fr, 12 atm", Measure::read);
    }

    private static Measure read(String text) {
        if (Pattern.matches("\\s*[0-9]+\\s*(?i:g|ga|gauge)\\s*", text)) {
            return new OfGauge(text.strip());
        }
        try {
            return new OfPressure(Pressure.parse(text));
        } catch (QuantitySyntaxException notAPressure) {
            return new OfLength(Kinds.LENGTH.reader().apply(text));
        }
    }
}
