/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.verdict;

import static org.ferrule.fit.verdict.ReasonCode.Weight.CAUTION;
import static org.ferrule.fit.verdict.ReasonCode.Weight.CONFLICT;
import static org.ferrule.fit.verdict.ReasonCode.Weight.DECIDES;
import static org.ferrule.fit.verdict.ReasonCode.Weight.NOTE;

/** Why a verdict is what it is. Each code says which arguments its reasons carry, in order. */
public enum ReasonCode {
    /** Short by (length), device section, its diameter, lumen section, its diameter. */
    STOPS_SHORT(DECIDES),
    /** On withdrawal: device's tip beyond the outer tip, device section, its diameter, lumen section, its diameter. */
    CAUGHT_ON_WITHDRAWAL(DECIDES),
    /** Worst clearance, required clearance, device section, lumen section. */
    LESS_THAN_REQUIRED(DECIDES),
    /** Worst clearance, required clearance, device section, lumen section. */
    ENOUGH_CLEARANCE(DECIDES),
    /** Device id, what is missing, where. */
    MISSING_FIGURE(DECIDES),
    /** Device id, the text that cannot be read, where. */
    UNREADABLE_FIGURE(DECIDES),
    /** Device id, stretch from station, to station: no section covers it. */
    UNCOVERED_STRETCH(DECIDES),
    /** Short by (length), insertable length, length asked for. */
    TOO_SHORT(DECIDES),
    /** Device id: its insertable length is not stated. */
    LENGTH_NOT_STATED(DECIDES),
    /** Who claims, label compared, value claimed, source. */
    CLAIM_SAYS_YES(DECIDES),
    /** Who claims, label compared, value claimed, source. */
    CLAIM_SAYS_NO(DECIDES),
    /** Who claims, source: the partner is named. */
    CLAIM_NAMES_PARTNER(DECIDES),
    /** Who claims, source: the partner is named as one that does not go with it. */
    CLAIM_EXCLUDES_PARTNER(DECIDES),
    /** Samples (number), source. */
    BENCH_PASSED(DECIDES),
    /** Samples (number), source. */
    BENCH_DID_NOT_PASS(DECIDES),
    /** Nominal clearance. */
    YES_AGAINST_GEOMETRY(CONFLICT),
    /** Worst clearance of the geometry. */
    NO_AGAINST_GEOMETRY(CONFLICT),
    /** Source of the bench result. */
    CLAIM_AGAINST_BENCH(CONFLICT),
    /** Source of the yes, source of the no. */
    CLAIMS_DISAGREE(CONFLICT),
    /** Source of the pass, source of the failure. */
    BENCH_RESULTS_DISAGREE(CONFLICT),
    /** Where a guide extension's tube begins there is a step. */
    COLLAR_STEP(CAUTION),
    /** A device that deploys is drawn back over an open distal edge. */
    OPEN_EDGE(CAUTION),
    /** Device section, low, centre, high profile after use: assumed from the rule set, source. */
    AFTER_USE_ASSUMED(NOTE),
    /** Device id, the figure as printed, where, low end, high end, source of the span. */
    SPAN_ASSUMED(NOTE),
    /** Device id, diameter of the wire that is taken to run beside the shaft. */
    OWN_WIRE_BESIDE(NOTE),
    /** Device id: it has a side port, and no wire is stated. */
    OWN_WIRE_NOT_STATED(DECIDES),
    /** The outlines may still find places that fit: nominal clearance of the best places found. */
    NOT_PROVED(DECIDES);

    /** What a reason does to a verdict. */
    public enum Weight {
        DECIDES, CONFLICT, CAUTION, NOTE
    }

    private final Weight weight;

    ReasonCode(Weight weight) {
        this.weight = weight;
    }

    /** What it does to the verdict. */
    public Weight weight() {
        return weight;
    }
}
