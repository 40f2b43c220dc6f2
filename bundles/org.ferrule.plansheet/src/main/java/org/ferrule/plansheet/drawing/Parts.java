/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.escalation.state.SystemState;
import org.ferrule.plansheet.words.PlanNames;

/** The devices of a system, outermost first, with what has changed. */
final class Parts {
    private final SystemState before;
    private final SystemState after;
    private final PlanNames names;
    private final List<Part> parts = new ArrayList<>();

    private Parts(SystemState before, SystemState after, PlanNames names) {
        this.before = before;
        this.after = after;
        this.names = names;
    }

    /** What is there after a change, and what the change took out. */
    static List<Part> of(SystemState before, SystemState after, PlanNames names) {
        Parts parts = new Parts(before, after, names);
        for (Part.Place place : Part.Place.values()) {
            parts.add(place);
        }
        return List.copyOf(parts.parts);
    }

    private void add(Part.Place place) {
        Optional<String> was = device(before, place);
        Optional<String> is = device(after, place);
        if (is.isPresent()) {
            Part.State state = is.equals(was) ? Part.State.THERE : Part.State.NEW;
            String replaced = was.filter(id -> state == Part.State.NEW).map(names::device).orElse("");
            parts.add(new Part(place, names.device(is.get()), state, replaced));
        } else {
            was.ifPresent(id -> parts.add(new Part(place, names.device(id), Part.State.OUT, "")));
        }
    }

    private static Optional<String> device(SystemState state, Part.Place place) {
        return switch (place) {
            case VALVE -> state.valve();
            case SHEATH -> state.sheath();
            case GUIDE -> Optional.of(state.guide());
            case EXTENSION -> state.extension().map(SystemState.PlacedExtension::device);
            case MICROCATHETER -> state.microcatheter();
            case MAIN_WIRE -> state.mainWire();
            case SECOND_WIRE -> state.secondWire();
            case ANCHOR -> state.anchor();
        };
    }
}
