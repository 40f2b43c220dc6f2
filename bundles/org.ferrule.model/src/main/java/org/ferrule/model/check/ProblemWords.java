/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.List;

/** The problems in English. All of their words are here. */
final class ProblemWords {

    private ProblemWords() {
    }

    static String of(ProblemCode code, List<String> arguments) {
        String text = pattern(code);
        for (int i = 0; i < arguments.size(); i++) {
            text = text.replace("{" + i + "}", arguments.get(i));
        }
        return text;
    }

    private static String pattern(ProblemCode code) {
        return switch (code) {
            case MISSING_VALUE -> "\"{0}\" is missing";
            case DUPLICATE_ID -> "the id \"{0}\" is that of another {1} too";
            case UNUSABLE_ID ->
                "the id \"{0}\" is empty, has blanks at an end, or has # or !, and cannot be referred to";
            case DUPLICATE_NAME -> "another {1} is named \"{0}\" too";
            case UNKNOWN_REFERENCE -> "there is no {1} \"{0}\" here";
            case BAD_PATH -> "\"{0}\" is no path relative to this document, with / and ending in {1}";
            case MISSING_SOURCE -> "no source is named for the figures";
            case BAD_DATE -> "\"{0}\" is no date; expected {1}";
            case UNREADABLE_FIGURE -> "cannot read \"{0}\"; expected {1}";
            case DOUBTFUL_FIGURE -> "{0}";
            case OUT_OF_RANGE -> "{0} is out of range; expected {1}";
            case REVERSED_STATIONS -> "the section begins at {0} and ends at {1}, which is not beyond it";
            case GAP -> "nothing is known between {0} and {1}";
            case OVERLAP -> "begins at {0}, before the section ahead of it ends at {1}";
            case BEYOND_EFFECTIVE_LENGTH -> "ends at {0}, beyond the effective length of {1}";
            case OPENING_BEYOND_LENGTH -> "the lumen opens at {0}, beyond the effective length of {1}";
            case LUMEN_TOO_LONG -> "the section reaches {0} into a lumen that is {1} long";
            case PLUG_BEHIND_COLLAR ->
                "begins at {0}, proximal to the collar at {1}, and would lie beside what passes with its whole {2}";
            case LUMEN_TOO_WIDE ->
                "an inner diameter of {0} is not less than the outer diameter of {1} of \"{2}\" around it";
            case SEVERAL_CROSS_SECTIONS -> "od, oval and discs exclude each other; {0} are given";
            case COMPLIANCE_NOT_RISING -> "{0} does not rise from {1} in the row before";
            case BURST_BELOW_NOMINAL -> "the rated burst pressure of {0} is below the nominal pressure of {1}";
            case LIMIT_BELOW_NOMINAL -> "the largest diameter of {0} is below the nominal diameter of {1}";
            case MISSING_DEFAULT_CLEARANCE -> "there is no clearance without kinds, which holds where no other does";
            case MISSING_SPAN -> "there is no span for the {0} of {1}";
            case COMPETING_RULES -> "another rule is for exactly the same kinds";
            case FACTORS_OUT_OF_ORDER -> "the factors {0}, {1} and {2} are not in rising order";
            case BAND_OUT_OF_ORDER -> "the band begins at {0} and ends at {1}, which is less";
            case BAND_WITHOUT_ENDS -> "the band has neither a lower nor an upper end";
            case NOT_MORE_THAN_ZERO -> "{0} is not more than zero";
            case CONDITIONS_EXCLUDE -> "\"{0}\" and \"{1}\" exclude each other";
            case VESSEL_WIDER_THAN_BEND ->
                "a vessel of {0} cannot bend with a radius of {1} along its centre line, which is less than half of it";
            case LESION_BEYOND_PATH -> "the lesion ends at {0}, beyond the end of its path at {1}";
            case BAD_VERDICTS -> "a row needs one letter of f, c, t, u, b for each of the {0} columns";
            case BAD_FINGERPRINT -> "\"{0}\" is no SHA-256: 64 hexadecimal digits in lower case";
            default -> PlanProblemWords.pattern(code);
        };
    }
}
