/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.thresholds.Points.Item;
import org.ferrule.thresholds.Source.Mark;
import org.ferrule.thresholds.dose.DoseRule;
import org.ferrule.thresholds.dose.DoseRules;
import org.ferrule.thresholds.renal.ContrastLimit;
import org.ferrule.thresholds.renal.ContrastLimits;
import org.junit.jupiter.api.Test;

/** Settings have a name and a source of their own, and say what they hold. */
class SettingsTest {

    @Test
    void everySettingHasAWordOfItsOwnAndASource() {
        Stream.of(ContrastLimits.published().stream().map(ContrastLimit::id).toList(),
                DoseRules.published().stream().map(DoseRule::id).toList())
                .forEach(ids -> assertEquals(ids.stream().distinct().toList(), ids));
        assertEquals(Mark.FROM_MEMORY, ContrastLimits.published().get(3).source().mark());
        assertThrows(IllegalArgumentException.class, () -> Source.seen(" "));
        assertEquals("own setting", Mark.OWN.words());
    }

    @Test
    void aThresholdHoldsAtItsValueOrBeyond() {
        assertTrue(Threshold.from("4").isReachedBy(new BigDecimal("4.00")));
        assertFalse(Threshold.beyond("4").isReachedBy(new BigDecimal("4.00")));
        assertTrue(Threshold.beyond("4").isReachedBy(new BigDecimal("4.01")));
        assertFalse(Threshold.from("4").isReachedBy(new BigDecimal("3.99")));
        assertThrows(IllegalArgumentException.class, () -> Threshold.from("0"));
    }

    @Test
    void whatIsNotKnownMayAddItsPoints() {
        Points points = new Points(List.of(Item.of("a", 2, Optional.of(true)), Item.of("b", 3, Optional.empty()),
                Item.of("c", 4, Optional.of(false)), Item.known("d", 1)));
        assertEquals(3, points.least());
        assertEquals(6, points.most());
        assertEquals(List.of("b"), points.unknown());
        assertThrows(IllegalArgumentException.class, () -> new Item("e", 2, 1));
        assertThrows(IllegalArgumentException.class, () -> new Item("e", -1, 1));
    }
}
