/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.List;

/**
 * A doubt about a quantity that was read. Carries a code and its figures, so that another language can word it.
 *
 * @param code what is doubtful
 * @param start the 0-based index of the doubtful part in the text
 * @param end the index after the doubtful part
 * @param arguments figures with units, in the order that the code documents
 */
public record QuantityWarning(Code code, int start, int end, List<String> arguments) {

    /** The kinds of doubt. */
    public enum Code {
        /** Below the plausible range. Arguments: the figure, the least plausible value, a likelier reading or "". */
        IMPLAUSIBLY_SMALL,
        /** Above the plausible range. Arguments: the figure, the most plausible value, a likelier reading or "". */
        IMPLAUSIBLY_LARGE,
        /** Two statements that differ by more than their rounding. Arguments: the first and the second statement. */
        STATEMENTS_DISAGREE
    }

    /** Copies the arguments. */
    public QuantityWarning {
        arguments = List.copyOf(arguments);
    }

    /** Returns the doubt in English. */
    public String message() {
        return switch (code) {
            case IMPLAUSIBLY_SMALL -> arguments.get(0) + " is implausibly small: less than " + bound();
            case IMPLAUSIBLY_LARGE -> arguments.get(0) + " is implausibly large: more than " + bound();
            case STATEMENTS_DISAGREE -> arguments.get(0) + " and " + arguments.get(1)
                    + " differ by more than rounding; the first is used";
        };
    }

    private String bound() {
        String reading = arguments.get(2);
        return arguments.get(1) + (reading.isEmpty() ? "" : "; " + reading + " would be plausible");
    }
}
