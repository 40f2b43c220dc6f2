/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.closing;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.model.CaseEnd;
import org.ferrule.model.ClosedDevice;
import org.ferrule.model.Closing;
import org.ferrule.model.DocumentHash;
import org.ferrule.ui.escalation.live.PlannedCase;

/** Says what closing a case does. */
final class ClosingWords {

    private static final int SHOWN_OF_HASH = 12;

    private ClosingWords() {
    }

    /** The record, in lines. */
    static String frozen(ClosingReview review, PlannedCase planned) {
        Closing closing = review.closing();
        List<String> lines = new ArrayList<>();
        lines.add(closing.getEnded() == CaseEnd.CROSSED ? "Ended: the device is across."
                : "Ended: stopped; by the log the device is not across.");
        lines.add("");
        lines.add("Planned before anything was logged:");
        for (int i = 0; i < closing.getPlan().size(); i++) {
            lines.add("   " + (i + 1) + ". " + planned.words().names().move(closing.getPlan().get(i).getMove()));
        }
        lines.add("");
        lines.add(closing.getDevices().isEmpty() ? "No units were used." : "Used:");
        closing.getDevices().forEach(device -> lines.add("   " + device(device, planned)));
        lines.add("");
        lines.add("Documents, with the beginning of their fingerprints (SHA-256):");
        closing.getHashes().forEach(hash -> lines.add("   " + document(hash)));
        return String.join("\n", lines);
    }

    private static String device(ClosedDevice device, PlannedCase planned) {
        String name = planned.words().names().item(device.getItem());
        String lot = device.getLot() == null ? "no lot noted" : "lot " + device.getLot();
        return name + ", " + lot + (device.getExpiry() == null ? "" : ", use by " + device.getExpiry());
    }

    private static String document(DocumentHash hash) {
        String revision = hash.getRevision() == null ? "" : ", rev. " + hash.getRevision();
        return hash.getFile() + revision + "  " + hash.getSha256().substring(0, SHOWN_OF_HASH) + "\u2026";
    }

    /** How many tries are counted, and where. */
    static String counts(ClosingReview review, String techniques) {
        if (review.counts().isEmpty()) {
            return "No try to be added to the laboratory's own counts";
        }
        long crossed = review.counts().stream().filter(counted -> counted.success()).count();
        return "&Add " + count(review.counts().size(), "try", "tries") + " (" + crossed + " crossed, "
                + (review.counts().size() - crossed) + " failed) to the laboratory's own counts in " + techniques;
    }

    /** How many units are taken, and from where. */
    static String units(ClosingReview review, String shelf) {
        if (shelf == null) {
            return "The case names no shelf to take units from";
        }
        if (review.units().isEmpty()) {
            return "No unit was used that could be taken off the shelf";
        }
        int there = review.units().size() - review.missing().size();
        return "&Take " + count(there, "unit", "units") + " off " + shelf;
    }

    private static String count(int number, String one, String several) {
        return number + " " + (number == 1 ? one : several);
    }
}
