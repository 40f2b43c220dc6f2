/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Choice;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Pick;

/** With what a step is done: the device, why it and not the next, and where its box lies. */
public final class EquipmentWords {
    private final Phrases phrases;
    private final PlanNames names;
    private final FitWords fits;

    EquipmentWords(Phrases phrases, PlanNames names, FitWords fits) {
        this.phrases = phrases;
        this.names = names;
        this.fits = fits;
    }

    /** Role and device, such as "small balloon: Dunlin 1.5 x 15"; that nobody plays it where nobody does. */
    public String chosen(RoleAnswer answer) {
        return phrases.fill("equipment.chosen", names.role(answer.role()), answer.chosen().map(this::name)
                .orElseGet(() -> phrases.get("equipment.nobody")));
    }

    /** Role and what stands on the box, such as "small balloon: Dunlin 1.5 x 15". */
    public String labelled(Role role, Candidate candidate) {
        return phrases.fill("equipment.chosen", names.role(role), label(candidate));
    }

    /** What stands on the box: the name of the item that is taken; of the device where none is. */
    public String label(Candidate candidate) {
        return candidate.supply().picks().stream().findFirst().map(pick -> names.item(pick.item()))
                .orElseGet(() -> name(candidate));
    }

    /** A candidate by the name of its device. */
    public String name(Candidate candidate) {
        return candidate.device().map(names::device).orElseGet(() -> Printable.line(candidate.name()));
    }

    /** Verdict and clearance of a candidate. */
    public String fit(Candidate candidate) {
        return fits.brief(candidate.suitability());
    }

    /** Why it was chosen before the next, which is named where there is one; empty where nobody was. */
    public String why(RoleAnswer answer) {
        Optional<String> next = answer.ranked().stream().skip(1).filter(Candidate::isReady).findFirst()
                .map(this::name);
        return answer.choice().map(choice -> next.map(name -> phrases.fill("choice.before", choice(choice), name))
                .orElseGet(() -> choice(choice))).orElse("");
    }

    /** A kind of reason for a choice. */
    public String choice(Choice choice) {
        return phrases.get("choice." + choice);
    }

    /** Item, lot, expiry and place of what to take, such as "2 x Dunlin 1.5 x 15: lot A213, use by 2027-02-28, ...". */
    public String pick(Pick pick) {
        return pick(pick, names.item(pick.item()));
    }

    /** The same without the name of the item, where that stands beside it. */
    public String box(Pick pick) {
        return pick(pick, "");
    }

    private String pick(Pick pick, String item) {
        String lot = String.join(", ", lot(pick.lot()));
        String what = item.isEmpty() ? lot : phrases.fill("pick", item, lot);
        return pick.count() == 1 ? what : phrases.fill("pick.several", Integer.toString(pick.count()), what);
    }

    /** Lot, serial number, expiry and place, as far as they are known. */
    public List<String> lot(Lot lot) {
        return List.of(lot.lot().isBlank() ? phrases.get("pick.noLot") : phrases.fill("pick.lot", line(lot.lot())),
                lot.serial().map(s -> phrases.fill("pick.serial", line(s))).orElse(""),
                lot.expiry().map(day -> phrases.fill("pick.expiry", day.toString()))
                        .orElseGet(() -> phrases.get("pick.noExpiry")),
                line(lot.location())).stream().filter(words -> !words.isBlank()).toList();
    }

    /** A place in the system. */
    public String slot(Slot slot) {
        return phrases.get("slot." + slot);
    }

    private static String line(String text) {
        return Printable.line(text);
    }
}
