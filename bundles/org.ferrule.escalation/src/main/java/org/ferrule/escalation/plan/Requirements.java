/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Outfitter;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/**
 * What the techniques of a ladder need in a case, as if the shelf had everything: for lists of what to buy. Where a set-up
 * changes the system, the best device for it is taken to be there when the roles after it are asked about.
 */
public final class Requirements {
    private static final int PLENTY = 1_000_000;

    private final Ladder ladder;
    private final Outfitter outfitter;
    private final SystemState system;

    private Requirements(Instruments instruments, Ladder ladder, CaseFile file) {
        this.ladder = ladder;
        this.outfitter = Outfitter.of(instruments, ladder, file, everything(instruments, ladder));
        this.system = file.system();
    }

    /**
     * Of each technique that is tried and could be done in the case, in the order of the ladder. What nobody has stated
     * yet is taken to hold; what was denied is not.
     */
    public static List<Requirement> of(Instruments instruments, Ladder ladder, CaseFile file) {
        Requirements requirements = new Requirements(instruments, ladder, file);
        return ladder.techniques().stream().filter(t -> !t.tries().isEmpty())
                .flatMap(t -> requirements.of(t).stream()).toList();
    }

    private Optional<Requirement> of(Technique technique) {
        List<Requirement.Part> parts = new ArrayList<>();
        SystemState state = system;
        for (Move move : moves(technique)) {
            MoveAnswer answer = outfitter.outfit(move, state);
            if (!answer.lacks().stream().allMatch(Requirements::mayStillHold)) {
                return Optional.empty();
            }
            answer.roles().forEach(role -> parts.add(new Requirement.Part(move.id(), role.role(),
                    devices(role, Verdict.FITS), devices(role, Verdict.TIGHT))));
            state = answer.after();
        }
        return Optional.of(new Requirement(technique, parts));
    }

    private static List<String> devices(RoleAnswer role, Verdict verdict) {
        return role.ranked().stream().filter(c -> c.suitability().verdict() == verdict)
                .flatMap(c -> c.device().stream()).toList();
    }

    private static boolean mayStillHold(Lack lack) {
        return lack instanceof Lack.FactMissing missing && !missing.denied();
    }

    private List<Move> moves(Technique technique) {
        List<Move> moves = new ArrayList<>(ladder.setupsOf(technique));
        moves.add(technique);
        return moves;
    }

    private static Stock everything(Instruments instruments, Ladder ladder) {
        Lot plenty = new Lot("", Optional.empty(), PLENTY, "", Optional.empty());
        List<Item> items = new ArrayList<>();
        Map<String, String> equipment = new HashMap<>();
        instruments.devices().forEach(device -> items.add(new Item("device " + device.id(), Optional.of(device.id()),
                Optional.empty(), List.of(plenty), 0, Optional.empty(), device.name())));
        for (String word : equipmentOf(ladder)) {
            items.add(new Item("equipment " + word, Optional.empty(), Optional.empty(), List.of(plenty), 0,
                    Optional.empty(), word));
            equipment.put("equipment " + word, word);
        }
        return new Stock(new Shelf(items), equipment);
    }

    private static Set<String> equipmentOf(Ladder ladder) {
        Set<String> words = new LinkedHashSet<>();
        List<Role> roles = new ArrayList<>(ladder.bailOut());
        ladder.setups().forEach(s -> roles.addAll(s.roles()));
        ladder.techniques().forEach(t -> roles.addAll(t.roles()));
        roles.forEach(role -> role.selection().equipment().ifPresent(words::add));
        return words;
    }
}
