/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.shelf.ready.Need;
import org.ferrule.shelf.ready.NeedAnswer;
import org.ferrule.shelf.ready.Readiness;
import org.ferrule.shelf.ready.ReadinessCheck;
import org.ferrule.shelf.stock.Item;

/**
 * Whether the shelf has what one technique needs in a case, asked of each technique by itself: what others may have taken
 * before is a matter of the plan.
 *
 * @param technique the technique
 * @param possible whether any device could do it in the system of the case
 * @param needs what the shelf has of each need; empty where it is not possible
 */
public record TechniqueReadiness(Technique technique, boolean possible, List<NeedAnswer> needs) {
    public TechniqueReadiness {
        Objects.requireNonNull(technique, "technique");
        needs = List.copyOf(needs);
    }

    /** Of all techniques that are tried, in the order of the ladder. */
    public static List<TechniqueReadiness> of(Instruments instruments, Ladder ladder, CaseFile file, Stock stock) {
        List<Requirement> requirements = Requirements.of(instruments, ladder, file);
        return ladder.techniques().stream().filter(t -> !t.tries().isEmpty()).map(technique -> requirements.stream()
                .filter(r -> r.technique().equals(technique)).findFirst().map(r -> of(r, file, stock))
                .orElseGet(() -> new TechniqueReadiness(technique, false, List.of()))).toList();
    }

    private static TechniqueReadiness of(Requirement requirement, CaseFile file, Stock stock) {
        return new TechniqueReadiness(requirement.technique(), true,
                ReadinessCheck.inOrder(stock.shelf(), needs(requirement, stock), file.day()));
    }

    /** The needs of a requirement, as items of a shelf; devices that no item is of are left out. */
    public static List<Need> needs(Requirement requirement, Stock stock) {
        List<Need> needs = new ArrayList<>();
        for (Requirement.Part part : requirement.parts()) {
            List<String> preferred = part.equipment().map(word -> ids(stock.ofEquipment(word).stream()))
                    .orElseGet(() -> items(part.fitting(), stock));
            List<String> second = items(part.tight(), stock).stream().filter(id -> !preferred.contains(id)).toList();
            needs.add(new Need(part.move() + "/" + part.role().id(), part.role().count(), preferred, second));
        }
        return needs;
    }

    private static List<String> items(List<String> devices, Stock stock) {
        return ids(devices.stream().flatMap(device -> stock.ofDevice(device).stream()));
    }

    private static List<String> ids(Stream<Item> items) {
        return items.map(Item::id).distinct().toList();
    }

    /** The worst of its needs; absent where it is not possible at all. */
    public Optional<Readiness> readiness() {
        return possible ? Optional.of(
                needs.stream().map(NeedAnswer::readiness).max(Comparator.naturalOrder()).orElse(Readiness.READY))
                : Optional.empty();
    }
}
