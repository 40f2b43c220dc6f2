/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

/** The problems of techniques, cases and shelves in English. */
final class PlanProblemWords {

    private PlanProblemWords() {
    }

    static String pattern(ProblemCode code) {
        return switch (code) {
            case CIRCULAR_REFERENCE -> "\"{0}\" needs itself, if only by way of others";
            case ROLE_WITHOUT_DEVICE -> "the role names neither a kind, nor a device, nor equipment";
            case DEVICE_AND_EQUIPMENT -> "a device and equipment exclude each other";
            case EMPTY_NEED -> "the need names neither a fact, nor a vessel, nor a branch";
            case MISSING_PROTRUSION -> "it is not said how far the guide extension protrudes";
            case CHANCE_RISES ->
                "the mean chance of {0} is more than the {1} of the try before; a plan takes the lower one";
            case PRIOR_WITHOUT_LABEL -> "it is not said who assumes these counts, and why";
            case NO_COSTS -> "nothing is said of what it uses up, which is taken for nothing";
            case OFF_LABEL_WITHOUT_REASON -> "it is not said why this lies outside the instructions for use";
            case LIMIT_WITHOUT_RESOURCE -> "a limit needs a resource, and a resource a limit";
            case STATED_TWICE -> "another statement is about \"{0}\" too";
            case IMPLAUSIBLE_PATIENT -> "\"{0}\": {1}";
            case PERSONAL_TEXT -> "\"{0}\" looks like {1}; nothing here may tell who the patient is";
            case ITEM_WITHOUT_DEVICE -> "the item is neither a device of the libraries nor equipment";
            case BAD_CODE -> "\"{0}\" is no device identifier; expected {1}";
            case DUPLICATE_CODE -> "another item has the device identifier \"{0}\" too";
            case DUPLICATE_LOT -> "the same lot lies twice in the same place";
            case LOT_WITH_TWO_DATES -> "lot {0} expires on two days: {1} and {2}";
            case SERIAL_OF_SEVERAL -> "{0} units cannot have one serial number";
            case EXPIRED -> "expired on {0}";
            default -> throw new IllegalArgumentException("no words for " + code);
        };
    }
}
