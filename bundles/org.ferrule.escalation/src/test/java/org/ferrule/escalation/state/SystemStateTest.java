/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.escalation.state;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** What lies in the system, and what is left when something is taken out. */
class SystemStateTest {
    private static final SystemState FULL = new SystemState(Optional.of("sheath"), Optional.of("valve"), "guide",
            Optional.of(new SystemState.PlacedExtension("extension", Length.ofMm(30))), Optional.of("micro"),
            Optional.of("wire"), Optional.of("second"), Optional.of("anchor"));

    private static List<String> without(Slot slot) {
        return FULL.without(slot).orElseThrow().devices();
    }

    @Test
    void devicesAreToldFromOutsideInwards() {
        assertEquals(List.of("sheath", "valve", "guide", "extension", "micro", "anchor", "second", "wire"),
                FULL.devices());
    }

    @Test
    void whatIsTakenOutLeavesTheRest() {
        assertEquals(List.of("sheath", "valve", "guide", "micro", "anchor", "second", "wire"),
                without(Slot.EXTENSION));
        assertEquals(List.of("sheath", "valve", "guide", "extension", "anchor", "second", "wire"),
                without(Slot.MICROCATHETER));
        assertEquals(List.of("sheath", "valve", "guide", "extension", "micro", "second", "wire"),
                without(Slot.ANCHOR));
    }

    @Test
    void theAnchorComesOutWithTheWireThatItRunsOn() {
        assertEquals(List.of("sheath", "valve", "guide", "extension", "micro", "wire"), without(Slot.SECOND_WIRE));
    }

    @Test
    void guideAndMainWireStayAndWhatIsNotThereCannotGo() {
        assertEquals(Optional.empty(), FULL.without(Slot.GUIDE));
        assertEquals(Optional.empty(), FULL.without(Slot.MAIN_WIRE));
        SystemState bare = Cases.system("guide-6", "wire-190");
        for (Slot slot : List.of(Slot.EXTENSION, Slot.MICROCATHETER, Slot.ANCHOR, Slot.SECOND_WIRE)) {
            assertEquals(Optional.empty(), bare.without(slot), slot.word());
        }
    }

    @Test
    void whatIsPutInTakesItsPlace() {
        assertEquals(List.of("sheath", "valve", "other", "extension", "micro", "anchor", "second", "wire"),
                FULL.withGuide("other").devices());
        assertEquals(List.of("sheath", "valve", "guide", "extension", "other", "anchor", "second", "wire"),
                FULL.withMicrocatheter("other").devices());
        assertEquals(List.of("sheath", "valve", "guide", "extension", "micro", "anchor", "other", "wire"),
                FULL.withSecondWire("other").devices());
        assertEquals(List.of("sheath", "valve", "guide", "extension", "micro", "other", "second", "wire"),
                FULL.withAnchor("other").devices());
    }

    @Test
    void aWireIsExchangedThroughAMicrocatheterThatComesOutThen() {
        assertEquals(List.of("sheath", "valve", "guide", "extension", "anchor", "second", "other"),
                FULL.withMainWire("other").devices());
    }

    @Test
    void whatWasUsedBeforeCountsWithWhatWasLogged() {
        CaseFile file = Cases.usual();
        assertEquals(Costs.NONE, file.used());
        CaseFile spent = new CaseFile(file.title(), file.day(), file.system(), file.target(), file.deliver(),
                file.facts(), file.aim(), new Costs(1, 2, 3, 4), List.of());
        assertEquals(new Costs(6, 7, 53, 4), spent.logging(Cases.failed("move", "balloon", "b")).used());
        assertEquals(1, spent.logging(Cases.failed("move", "balloon", "b")).log().size());
    }
}
