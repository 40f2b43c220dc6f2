/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A case that is to be made ready.
 *
 * @param id what the case is called; no patient's name
 * @param date the day; what expires before it cannot be used
 * @param rungs its rungs, each id once
 */
public record PurchaseCase(String id, LocalDate date, List<Rung> rungs) {

    /**
     * Checks the ids.
     *
     * @throws IllegalArgumentException naming the case and an id that two rungs, or two needs of a rung, have
     */
    public PurchaseCase {
        rungs = List.copyOf(rungs);
        Set<String> ids = new HashSet<>();
        for (Rung rung : rungs) {
            Set<String> needs = new HashSet<>();
            if (!ids.add(rung.id()) || !rung.needs().stream().allMatch(need -> needs.add(need.id()))) {
                throw new IllegalArgumentException(
                        "case \"" + id + "\": rung \"" + rung.id() + "\" or one of its needs stands twice");
            }
        }
    }

    /** Returns the axes of its rungs, by name. */
    public List<String> axes() {
        return List.copyOf(new TreeSet<>(rungs.stream().map(Rung::axis).toList()));
    }

    /** Returns its rungs of an axis. */
    public List<Rung> rungsOf(String axis) {
        return rungs.stream().filter(rung -> rung.axis().equals(axis)).toList();
    }
}
