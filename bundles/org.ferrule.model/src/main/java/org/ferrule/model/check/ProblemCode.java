/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

/** What can be wrong with the content of a document, with its severity. The words are in {@link ProblemWords}. */
public enum ProblemCode {

    /** A value that must be there is not. */
    MISSING_VALUE(Severity.ERROR),
    /** Two elements have the same id. */
    DUPLICATE_ID(Severity.ERROR),
    /** An id that references could not name. */
    UNUSABLE_ID(Severity.ERROR),
    /** Two parts of one device have the same name. */
    DUPLICATE_NAME(Severity.ERROR),
    /** A reference that leads nowhere. */
    UNKNOWN_REFERENCE(Severity.ERROR),
    /** A file reference that cannot be one. */
    BAD_PATH(Severity.ERROR),
    /** Figures without any source. */
    MISSING_SOURCE(Severity.WARNING),
    /** A date that is not ISO 8601. */
    BAD_DATE(Severity.WARNING),
    /** A text that is no dimension, pressure or offset. */
    UNREADABLE_FIGURE(Severity.ERROR),
    /** A figure that is implausible or contradicts itself. */
    DOUBTFUL_FIGURE(Severity.WARNING),
    /** A number outside its range. */
    OUT_OF_RANGE(Severity.ERROR),
    /** A section that ends before it begins. */
    REVERSED_STATIONS(Severity.ERROR),
    /** A stretch without a section. */
    GAP(Severity.WARNING),
    /** A stretch with two sections. */
    OVERLAP(Severity.ERROR),
    /** A section that ends beyond its device. */
    BEYOND_EFFECTIVE_LENGTH(Severity.ERROR),
    /** A lumen that opens beyond the end of its device. */
    OPENING_BEYOND_LENGTH(Severity.ERROR),
    /** A lumen whose sections are longer than there is room for. */
    LUMEN_TOO_LONG(Severity.ERROR),
    /** A shaft proximal to the collar of an extension that fills the lumen around it like a plug. */
    PLUG_BEHIND_COLLAR(Severity.WARNING),
    /** A lumen that is not narrower than the shaft around it. */
    LUMEN_TOO_WIDE(Severity.ERROR),
    /** A cross-section that is given in more than one way. */
    SEVERAL_CROSS_SECTIONS(Severity.ERROR),
    /** A compliance table that does not rise. */
    COMPLIANCE_NOT_RISING(Severity.ERROR),
    /** A rated burst pressure below the nominal pressure. */
    BURST_BELOW_NOMINAL(Severity.ERROR),
    /** A limit of dilatation below the nominal diameter. */
    LIMIT_BELOW_NOMINAL(Severity.ERROR),
    /** A rule set without the clearance that holds where no other does. */
    MISSING_DEFAULT_CLEARANCE(Severity.ERROR),
    /** A rule set without a span for a class of figure. */
    MISSING_SPAN(Severity.ERROR),
    /** Two rules for the same case. */
    COMPETING_RULES(Severity.ERROR),
    /** Factors of growth that are out of order. */
    FACTORS_OUT_OF_ORDER(Severity.ERROR),
    /** A band that ends before it begins. */
    BAND_OUT_OF_ORDER(Severity.ERROR),
    /** A band without ends, in which everything lies. */
    BAND_WITHOUT_ENDS(Severity.WARNING),
    /** A figure that must be more than zero and is not. */
    NOT_MORE_THAN_ZERO(Severity.ERROR),
    /** Conditions that cannot hold together. */
    CONDITIONS_EXCLUDE(Severity.ERROR),
    /** A vessel that is too wide to bend like that. */
    VESSEL_WIDER_THAN_BEND(Severity.WARNING),
    /** A row of a sign-off that has not one verdict for each column. */
    BAD_VERDICTS(Severity.ERROR),
    /** A fingerprint that cannot be one. */
    BAD_FINGERPRINT(Severity.ERROR),
    /** A lesion beyond the end of its path. */
    LESION_BEYOND_PATH(Severity.WARNING),
    /** A set-up or a technique that needs itself. */
    CIRCULAR_REFERENCE(Severity.ERROR),
    /** A role that nothing is asked for. */
    ROLE_WITHOUT_DEVICE(Severity.ERROR),
    /** Something that is a device and equipment. */
    DEVICE_AND_EQUIPMENT(Severity.ERROR),
    /** A need without a condition. */
    EMPTY_NEED(Severity.ERROR),
    /** A guide extension of which nobody says how far it protrudes. */
    MISSING_PROTRUSION(Severity.ERROR),
    /** A try with a better chance than the one before. */
    CHANCE_RISES(Severity.WARNING),
    /** Assumed counts of which nobody says who assumes them. */
    PRIOR_WITHOUT_LABEL(Severity.ERROR),
    /** A step of which nobody says what it uses up. */
    NO_COSTS(Severity.WARNING),
    /** A step outside the instructions for use without a reason. */
    OFF_LABEL_WITHOUT_REASON(Severity.ERROR),
    /** A limit of nothing, or a resource without a limit. */
    LIMIT_WITHOUT_RESOURCE(Severity.ERROR),
    /** A fact that is stated twice. */
    STATED_TWICE(Severity.ERROR),
    /** A figure of a patient that cannot be. */
    IMPLAUSIBLE_PATIENT(Severity.ERROR),
    /** A text that could tell who the patient is. */
    PERSONAL_TEXT(Severity.WARNING),
    /** An item of which nobody says what it is. */
    ITEM_WITHOUT_DEVICE(Severity.WARNING),
    /** A device identifier that cannot be one. */
    BAD_CODE(Severity.ERROR),
    /** Two items with one device identifier. */
    DUPLICATE_CODE(Severity.ERROR),
    /** The same units twice. */
    DUPLICATE_LOT(Severity.ERROR),
    /** One lot with two dates of expiry. */
    LOT_WITH_TWO_DATES(Severity.ERROR),
    /** Several units with one serial number. */
    SERIAL_OF_SEVERAL(Severity.ERROR),
    /** Units that must not be used any more. */
    EXPIRED(Severity.WARNING);

    private final Severity severity;

    ProblemCode(Severity severity) {
        this.severity = severity;
    }

    /** Returns how grave it is. */
    public Severity severity() {
        return severity;
    }
}
