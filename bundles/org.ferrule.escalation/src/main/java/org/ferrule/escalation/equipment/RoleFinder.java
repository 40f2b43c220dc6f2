/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.escalation.equipment.Candidate.Supply;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Task;
import org.ferrule.fit.device.Device;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Pick;

/** Finds who can play one role: first among what the shelf has, and only if nobody there can, among all devices. */
final class RoleFinder {
    private final Instruments instruments;
    private final Target target;
    private final LocalDate day;
    private final Stock stock;

    RoleFinder(Instruments instruments, Target target, LocalDate day, Stock stock) {
        this.instruments = instruments;
        this.target = target;
        this.day = day;
        this.stock = stock;
    }

    /** Where a role is to be played. */
    record Scene(SystemState state, boolean throughCatheter, Optional<Device> catheter, boolean holdsOthers) {
    }

    /** Candidates, best first; what cannot be asked about yet is left out. */
    RoleAnswer find(Role role, Scene scene) {
        Ranking ranking = new Ranking(instruments, role, scene.holdsOthers());
        if (role.selection().equipment().isPresent()) {
            return ranking.rank(equipment(role, role.selection().equipment().get()));
        }
        List<Device> matching = matching(role);
        List<Candidate> there = candidates(role, scene, matching.stream().filter(this::isOnShelf));
        RoleAnswer first = ranking.rank(there);
        if (first.chosen().isPresent()) {
            return first;
        }
        List<Candidate> all = new ArrayList<>(there);
        all.addAll(candidates(role, scene, matching.stream().filter(device -> !isOnShelf(device))));
        return ranking.rank(all);
    }

    /** What is not stated, but must be known before it can be asked who passes. */
    Optional<Lack.Place> missing(Role role, Scene scene) {
        SystemQuestions questions = new SystemQuestions(instruments, target, scene.state());
        return role.task() == Task.STAND_BY ? Optional.empty() : matching(role).stream().findFirst()
                .flatMap(d -> questions.missing(role, d, scene.throughCatheter(), scene.catheter()));
    }

    private List<Device> matching(Role role) {
        Sizes sizes = new Sizes(target);
        return instruments.devices().stream().filter(device -> sizes.match(role, device)).toList();
    }

    private boolean isOnShelf(Device device) {
        return stock.ofDevice(device.id()).stream().anyMatch(item -> item.usableOn(day) > 0);
    }

    private List<Candidate> equipment(Role role, String word) {
        Supply supply = supply(stock.ofEquipment(word), role.count());
        return supply.items().isEmpty() ? List.of()
                : List.of(new Candidate(Optional.empty(), word, Suitability.STANDS_BY, supply));
    }

    private List<Candidate> candidates(Role role, Scene scene, Stream<Device> devices) {
        return devices.map(device -> new Candidate(Optional.of(device.id()), name(device),
                suitability(role, scene, device), supply(stock.ofDevice(device.id()), role.count()))).toList();
    }

    private static String name(Device device) {
        return device.name().isEmpty() ? device.id() : device.name();
    }

    private Suitability suitability(Role role, Scene scene, Device device) {
        if (role.task() == Task.STAND_BY) {
            return Suitability.STANDS_BY;
        }
        SystemQuestions questions = new SystemQuestions(instruments, target, scene.state());
        Optional<Filling> filling = role.task() == Task.FILL && role.goal() == Goal.IN_GUIDE
                ? questions.filling(device) : Optional.empty();
        return new Suitability(
                questions.ask(role, device, scene.throughCatheter() ? scene.catheter() : Optional.empty()), filling);
    }

    /** Units of one item, the first that has enough. */
    private Supply supply(List<Item> items, int count) {
        List<Pick> picks = items.stream().filter(item -> item.usableOn(day) >= count).findFirst()
                .map(item -> stock.shelf().pick(item.id(), day, count)).orElse(List.of());
        int usable = items.stream().mapToInt(item -> item.usableOn(day)).sum();
        int all = items.stream().mapToInt(Item::quantity).sum();
        return new Supply(picks, usable, all - usable, items.stream().map(Item::id).toList());
    }
}
