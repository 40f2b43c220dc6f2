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

    /** A candidate by its name. */
    public String name(Candidate candidate) {
        return candidate.device().map(names::device).orElseGet(() -> Printable.line(candidate.name()));
    }

    /** Verdict and clearance of who was chosen; empty where nobody was. */
    public String fit(RoleAnswer answer) {
        return answer.chosen().map(c -> fits.brief(c.suitability())).orElse("");
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
        String what = pick.count() == 1 ? names.item(pick.item())
                : phrases.fill("pick.several", Integer.toString(pick.count()), names.item(pick.item()));
        return phrases.fill("pick", what, String.join(", ", lot(pick.lot())));
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
