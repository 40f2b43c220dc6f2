/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.shelf.stock.Pick;

/**
 * Something that could play a role.
 *
 * @param device its id; absent for equipment
 * @param name in words
 * @param suitability whether it can
 * @param supply whether it is there
 */
public record Candidate(Optional<String> device, String name, Suitability suitability, Supply supply) {

    /**
     * What the shelf has of it.
     *
     * @param picks which units to take, first expired first; none where there are not enough
     * @param usable how many may be used on the day
     * @param expired how many have expired by then
     * @param items ids of the items on the shelf, whether anything is left of them or not
     */
    public record Supply(List<Pick> picks, int usable, int expired, List<String> items) {
        public Supply {
            picks = List.copyOf(picks);
            items = List.copyOf(items);
        }

        /** Whether there are enough units. */
        public boolean suffices() {
            return !picks.isEmpty();
        }
    }

    public Candidate {
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(suitability, "suitability");
        Objects.requireNonNull(supply, "supply");
    }

    /** Whether it can be planned with: it passes, and it is there. */
    public boolean isReady() {
        return suitability.isUsable() && supply.suffices();
    }
}
