/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.required;

import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.chart.words.Phrases;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.size.Flip;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

/** Words for required diameters: a shaft's are rounded down, since it may be no larger, a lumen's up. */
public final class RequiredWords {
    private final RequiredLanes lanes;
    private final ProfileWords words;
    private final boolean bore;

    /** Words for these lanes. */
    public RequiredWords(RequiredLanes lanes, ProfileWords words) {
        this.lanes = lanes;
        this.words = words;
        this.bore = lanes.required().section().isBore();
    }

    private Phrases phrases() {
        return words.phrases();
    }

    LengthUnit unit() {
        return words.lengths().units().primary();
    }

    /** What is asked. */
    public String title() {
        Place place = lanes.required().section().place();
        String device = place.device().name().isEmpty() ? place.device().id() : place.device().name();
        return phrases().fill(bore ? "required.title.bore" : "required.title.shaft", words.section(place.name()),
                device,
                phrases().get("required." + lanes.phase()));
    }

    String axis() {
        return phrases().fill(
                lanes.required().section().printed().isUniform() ? "required.axis" : "required.axis.taper",
                unit().symbol());
    }

    String note() {
        return phrases().get(lanes.phase() == Phase.IN ? "required.note" : "required.note.out");
    }

    /** A diameter to a micrometre (or ten-thousandth of an inch), in the safe direction, with its unit. */
    public String diameter(Length diameter) {
        int decimals = unit() == LengthUnit.INCH ? 5 : 4;
        return (bore ? LengthFormat.atLeast(unit(), decimals) : LengthFormat.atMost(unit(), decimals)).format(diameter);
    }

    String value(Length diameter) {
        return diameter(diameter);
    }

    String printed() {
        return phrases().fill("required.printed",
                LengthFormat.faithful(unit()).format(lanes.printed()).length() > 12 ? diameter(lanes.printed())
                        : LengthFormat.faithful(unit()).format(lanes.printed()));
    }

    String limit(Length limit) {
        return phrases().fill(bore ? "required.limit.bore" : "required.limit.shaft", diameter(limit));
    }

    /** A flip in words. */
    public String flip(Flip flip) {
        Length at = bore ? flip.first().distal() : flip.last().distal();
        return phrases().fill(bore ? "required.flip.bore" : "required.flip.shaft", flip.below().word(),
                flip.above().word(), diameter(at));
    }

    /** A partner in words: its flips, or what holds its verdict. */
    public String lane(PartnerLane lane) {
        List<Flip> flips = lane.sizes().flips();
        if (flips.isEmpty()) {
            String held = lane.heldBy().map(holds -> phrases().get("required.held." + holds)).orElse("");
            return phrases().fill("required.always", lane.name(), lane.sizes().easiest().verdict().word(), held);
        }
        return phrases().fill("required.lane", lane.name(),
                flips.stream().map(this::flip).collect(Collectors.joining(", ")));
    }

    /** What is at a diameter, and what it changes beside the printed one. */
    public String chosen(Length diameter) {
        List<RequiredLanes.Change> changes = lanes.changes(lanes.printed(), diameter);
        String head = phrases().fill("required.chosen", diameter(diameter), counts(diameter));
        return changes.isEmpty() ? phrases().fill("required.chosen.same", head)
                : phrases().fill("required.chosen.changes", head,
                        changes.stream().map(this::change).collect(Collectors.joining("; ")));
    }

    private String counts(Length diameter) {
        StringBuilder text = new StringBuilder();
        for (Verdict verdict : Verdict.values()) {
            long count = lanes.lanes().stream().filter(lane -> lane.at(diameter) == verdict).count();
            if (count > 0) {
                text.append(text.isEmpty() ? "" : ", ").append(count).append(' ').append(verdict.word());
            }
        }
        return text.toString();
    }

    private String change(RequiredLanes.Change change) {
        return phrases().fill("required.change", change.lane().name(), change.before().word(), change.after().word());
    }
}
