/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.words.Printable;
import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Role;
import org.ferrule.fit.device.Device;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Shelf;

/** What things are called; an id where nobody names them. */
public final class PlanNames {
    private final Ladder ladder;
    private final Instruments instruments;
    private final Shelf shelf;

    /** Names of moves and facts of a ladder, of devices, and of items of a shelf. */
    PlanNames(Ladder ladder, Instruments instruments, Shelf shelf) {
        this.ladder = Objects.requireNonNull(ladder, "ladder");
        this.instruments = Objects.requireNonNull(instruments, "instruments");
        this.shelf = Objects.requireNonNull(shelf, "shelf");
    }

    /** A device. */
    public String device(String id) {
        return named(instruments.find(id).map(Device::name), id);
    }

    /** An item of the shelf; the name of its device where it has none of its own. */
    public String item(String id) {
        Optional<Item> item = shelf.item(id);
        Optional<String> own = item.map(Item::name).filter(name -> !name.isBlank());
        return named(own.or(() -> item.flatMap(Item::device).map(this::device)), id);
    }

    /** A technique or a set-up. */
    public String move(String id) {
        return named(Stream.<Move>concat(ladder.setups().stream(), ladder.techniques().stream())
                .filter(move -> move.id().equals(id)).map(Move::name).findFirst(), id);
    }

    /** Whether a set-up of the ladder has that id. */
    boolean isSetup(String id) {
        return ladder.setups().stream().anyMatch(setup -> setup.id().equals(id));
    }

    /** A statement about the case, without its full stop. */
    public String fact(String id) {
        String words = named(Optional.ofNullable(ladder.facts().get(id)), id).strip();
        return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
    }

    /** A role. */
    public String role(Role role) {
        return named(Optional.of(role.name()), role.id());
    }

    private static String named(Optional<String> name, String id) {
        return Printable.line(name.filter(words -> !words.isBlank()).orElse(id));
    }
}
