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
    STOPS_SHORT(DECIDES, 5),
    /** On withdrawal: device's tip beyond the outer tip, device section, its diameter, lumen section, its diameter. */
    CAUGHT_ON_WITHDRAWAL(DECIDES, 5),
    /** Worst clearance, required clearance, device section, lumen section. */
    LESS_THAN_REQUIRED(DECIDES, 4),
    /** Worst clearance, required clearance, device section, lumen section. */
    ENOUGH_CLEARANCE(DECIDES, 4),
    /** Device id, what is missing, where. */
    MISSING_FIGURE(DECIDES, 3),
    /** Device id, the text that cannot be read, where. */
    UNREADABLE_FIGURE(DECIDES, 3),
    /** Device id, stretch from station, to station: no section covers it. */
    UNCOVERED_STRETCH(DECIDES, 3),
    /** Short by (length), insertable length, length asked for. */
    TOO_SHORT(DECIDES, 3),
    /** Device id: its insertable length is not stated. */
    LENGTH_NOT_STATED(DECIDES, 1),
    /** Short by (length) when hub and valve are allowed for, what they take, source. */
    SHORT_WITH_VALVE(DECIDES, 3),
    /** Device id, its side port comes out of the outer tip by (length), port station, reach asked for. */
    PORT_OUTSIDE(DECIDES, 4),
    /** Device id: it has a side port, and nobody states where. */
    PORT_NOT_STATED(DECIDES, 1),
    /** Device section, its rigid length, longest that passes, radius of the bend. */
    RIGID_STOPS_IN_BEND(DECIDES, 4),
    /** Worst clearance in the bend, required clearance, device section, its rigid length, radius of the bend. */
    RIGID_TIGHT_IN_BEND(DECIDES, 5),
    /** Extension's name, length of its tube that stays in the guide, least length, source. */
    LITTLE_OVERLAP(DECIDES, 4),
    /** Extension's name: its collar comes out of the guide's tip by (length). */
    COLLAR_BEYOND_TIP(DECIDES, 2),
    /** Extension's name: how long its tube is, is not stated. */
    TUBE_NOT_STATED(DECIDES, 1),
    /** Who claims, label compared, value claimed, source. */
    CLAIM_SAYS_YES(DECIDES, 4),
    /** Who claims, label compared, value claimed, source. */
    CLAIM_SAYS_NO(DECIDES, 4),
    /** Who claims, source: the partner is named. */
    CLAIM_NAMES_PARTNER(DECIDES, 2),
    /** Who claims, source: the partner is named as one that does not go with it. */
    CLAIM_EXCLUDES_PARTNER(DECIDES, 2),
    /** Device id, its section, its diameter there, needed together: it lies beside the device that passes. */
    LIES_BESIDE(DECIDES, 4),
    /** Extension id, how far its collar would lie outside the hub of the outer device. */
    COLLAR_OUTSIDE(DECIDES, 2),
    /** Samples (number), source. */
    BENCH_PASSED(DECIDES, 2),
    /** Samples (number), source. */
    BENCH_DID_NOT_PASS(DECIDES, 2),
    /** Nominal clearance. */
    YES_AGAINST_GEOMETRY(CONFLICT, 1),
    /** Worst clearance of the geometry. */
    NO_AGAINST_GEOMETRY(CONFLICT, 1),
    /** Source of the bench result. */
    CLAIM_AGAINST_BENCH(CONFLICT, 1),
    /** Source of the yes, source of the no. */
    CLAIMS_DISAGREE(CONFLICT, 2),
    /** Source of the pass, source of the failure. */
    BENCH_RESULTS_DISAGREE(CONFLICT, 2),
    /** Where a guide extension's tube begins there is a step. */
    COLLAR_STEP(CAUTION, 0),
    /** A device that deploys is drawn back over an open distal edge. */
    OPEN_EDGE(CAUTION, 0),
    /** Extension id, largest outer diameter of its tube, inner diameter of the lumen where it lies. */
    EXTENSION_TOO_THICK(CAUTION, 3),
    /** Extension id, how far its tip lies beyond the outer tip: the reach counts from there. */
    REACH_FROM_EXTENSION(NOTE, 2),
    /** Device's name, its largest outer diameter, smallest diameter of the vessel in which it lies. */
    LARGER_THAN_VESSEL(CAUTION, 3),
    /** What flow is for, share of the empty lumen's flow at best, least share, source. */
    FLOW_TOO_LOW(CAUTION, 4),
    /** What flow is for, share of the empty lumen's flow where the devices lie worst, least share, source. */
    FLOW_MAY_BE_LOW(CAUTION, 4),
    /** Greatest chance of an overlap by the standard deviations stated, greatest chance allowed, source. */
    CHANCE_TOO_HIGH(CAUTION, 3),
    /** Device section, its rigid length, radius of the vessel's bend, radius to which it must straighten. */
    VESSEL_MUST_STRAIGHTEN(CAUTION, 4),
    /** Device section, its rigid length, radius of the vessel's bend, diameter that it would need there. */
    VESSEL_MUST_BE_WIDE(CAUTION, 4),
    /** Wire's name: too short by (length) to exchange over it, its length, length needed, source of the grip. */
    EXCHANGE_WIRE_SHORT(CAUTION, 5),
    /** Wire's name: an extension can be attached to it. */
    EXCHANGE_BY_EXTENSION(NOTE, 1),
    /** Device section, its rigid length, longest that passes in the worst case, radius of the bend. */
    RIGID_PASSES_BEND(NOTE, 4),
    /** Greatest chance of an overlap by the standard deviations stated, device section, lumen section. */
    CHANCE_OF_OVERLAP(NOTE, 3),
    /** Length of the bend, rigid length: the bend is shorter, so what is said of it errs on the safe side. */
    BEND_SHORTER_THAN_PART(NOTE, 2),
    /** Radius of the bend, diameter of the lumen: the radius counts as the lumen's diameter. */
    BEND_NARROWER_THAN_LUMEN(NOTE, 2),
    /** Device id, imaging plane behind the tip, how far the plane comes beyond the outer tip. */
    LANDING_OF_PLANE(NOTE, 3),
    /** Device id, distal edge of the first marker behind the tip, how far it comes beyond the outer tip. */
    LANDING_OF_MARKER(NOTE, 3),
    /** Device section, low, centre, high profile after use: assumed from the rule set, source. */
    AFTER_USE_ASSUMED(NOTE, 5),
    /** Device id, the figure as printed, where, low end, high end, source of the span. */
    SPAN_ASSUMED(NOTE, 6),
    /** Device id, diameter of the wire that is taken to run beside the shaft. */
    OWN_WIRE_BESIDE(NOTE, 2),
    /** Device id: it has a side port, and no wire is stated. */
    OWN_WIRE_NOT_STATED(DECIDES, 1),
    /** The outlines may still find places that fit: nominal clearance of the best places found. */
    NOT_PROVED(DECIDES, 1);

    /** What a reason does to a verdict. */
    public enum Weight {
        DECIDES, CONFLICT, CAUTION, NOTE
    }

    private final Weight weight;
    private final int argumentCount;

    ReasonCode(Weight weight, int argumentCount) {
        this.weight = weight;
        this.argumentCount = argumentCount;
    }

    /** How many arguments a reason of this code carries. */
    public int argumentCount() {
        return argumentCount;
    }

    /** What it does to the verdict. */
    public Weight weight() {
        return weight;
    }
}
