/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Crossing;
import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Outfitter;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.escalation.technique.Task;
import org.ferrule.fit.device.DeviceKind;

/** Looks for the smallest change that would make possible what is not: one thing at a time. */
final class RemedySearch {
    private final Instruments instruments;
    private final Outfitter outfitter;

    RemedySearch(Instruments instruments, Outfitter outfitter) {
        this.instruments = instruments;
        this.outfitter = outfitter;
    }

    /** At most one for each lack, in the order of the lacks; none for what no change of this kind mends. */
    List<Remedy> of(SystemState system, List<Lack> lacks) {
        List<Remedy> remedies = new ArrayList<>();
        for (Lack lack : lacks) {
            remedy(system, lack).filter(remedy -> !remedies.contains(remedy)).ifPresent(remedies::add);
        }
        return remedies;
    }

    private Optional<Remedy> remedy(SystemState system, Lack lack) {
        if (lack instanceof Lack.FactMissing missing && !missing.denied()) {
            return Optional.of(new Remedy.State(missing.fact()));
        }
        if (lack instanceof Lack.NotOnShelf absent) {
            return absent.role().selection().equipment().or(() -> absent.wouldServe().stream().findFirst())
                    .map(Remedy.Obtain::new);
        }
        if (lack instanceof Lack.Expired expired) {
            return Optional.of(new Remedy.Obtain(deviceOf(expired.item())));
        }
        if (lack instanceof Lack.UsedUp used) {
            return Optional.of(new Remedy.Obtain(deviceOf(used.item())));
        }
        return lack instanceof Lack.DoesNotPass blocked ? moreRoom(system, blocked) : Optional.empty();
    }

    private String deviceOf(String item) {
        return outfitter.stock().shelf().item(item).flatMap(i -> i.device()).orElse(item);
    }

    private Optional<Remedy> moreRoom(SystemState system, Lack.DoesNotPass blocked) {
        boolean inSystem = blocked.nearest().suitability().deciding()
                .filter(c -> c.way() == Crossing.Way.SYSTEM).isPresent();
        return inSystem ? takeOut(system, blocked.role()).or(() -> otherGuide(system, blocked.role()))
                : Optional.empty();
    }

    /** What may be drawn back was tried before; what a move needs must stay. That leaves the microcatheter. */
    private Optional<Remedy> takeOut(SystemState system, Role role) {
        return system.without(Slot.MICROCATHETER).flatMap(state -> serves(role, state))
                .map(device -> new Remedy.TakeOut(Slot.MICROCATHETER, device));
    }

    /** A guide that the sheath takes and through which something on the shelf would pass; those on the shelf first. */
    private Optional<Remedy> otherGuide(SystemState system, Role role) {
        if (system.sheath().isEmpty()) {
            return Optional.empty();
        }
        MoveAnswer.Single guides = outfitter.role(guideRole(), system);
        return guides.answer().stream().flatMap(a -> a.ranked().stream())
                .filter(c -> c.suitability().isUsable() && !c.device().equals(Optional.of(system.guide())))
                .flatMap(guide -> remedy(system, role, guide).stream()).findFirst();
    }

    private Optional<Remedy> remedy(SystemState system, Role role, Candidate guide) {
        String id = guide.device().orElseThrow();
        boolean holds = instruments.device(id).mainLumen().isPresent();
        return holds ? serves(role, system.withGuide(id))
                .map(device -> new Remedy.ExchangeGuide(id, guide.supply().suffices(), device)) : Optional.empty();
    }

    private static Role guideRole() {
        return new Role("guide", "guide catheter", Selection.ofKinds(Set.of(DeviceKind.GUIDE_CATHETER)),
                Task.PASS, Carrier.NONE, Goal.GUIDE_TIP, 1, false);
    }

    private Optional<String> serves(Role role, SystemState state) {
        return outfitter.role(role, state).answer().flatMap(a -> a.chosen()).flatMap(Candidate::device);
    }
}
