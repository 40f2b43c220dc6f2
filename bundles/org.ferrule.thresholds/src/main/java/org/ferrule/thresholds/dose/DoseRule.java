/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.dose;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.thresholds.Source;

/**
 * A set of levels that were published together.
 *
 * @param id its word, by which settings and texts name it
 * @param levels the levels, lower before higher
 * @param source where they were published
 */
public record DoseRule(String id, List<DoseLevel> levels, Source source) {

    /** Copies the list. */
    public DoseRule {
        levels = List.copyOf(levels);
    }

    /**
     * A level of this set beside a dose.
     *
     * @param level the level
     * @param dose the dose, in the unit of the level's quantity
     */
    public record Notice(DoseLevel level, BigDecimal dose) {

        /** Returns how many times it has been reached. */
        public int times() {
            return level.timesReached(dose);
        }

        /** Returns how much is left until it comes next, or empty if it does not come any more. */
        public Optional<BigDecimal> left() {
            return level.nextAt(dose).map(next -> next.subtract(dose));
        }
    }

    /**
     * Returns the levels that a dose has reached.
     *
     * @param dose the dose so far, as far as it is known, each in the unit of its quantity
     * @throws IllegalArgumentException naming a dose that is not plausible
     */
    public List<Notice> reached(Map<DoseQuantity, BigDecimal> dose) {
        return notices(dose).stream().filter(notice -> notice.times() > 0).toList();
    }

    /** Returns what comes next of a quantity, or empty where nothing of this set does. */
    public Optional<Notice> next(DoseQuantity quantity, Map<DoseQuantity, BigDecimal> dose) {
        return notices(dose).stream()
                .filter(notice -> notice.level().quantity() == quantity && notice.left().isPresent())
                .min(Comparator.comparing(notice -> notice.left().orElseThrow()));
    }

    private List<Notice> notices(Map<DoseQuantity, BigDecimal> dose) {
        dose.forEach((quantity, value) -> quantity.scale().check(value));
        return levels.stream().filter(level -> dose.containsKey(level.quantity()))
                .map(level -> new Notice(level, dose.get(level.quantity()))).toList();
    }
}
