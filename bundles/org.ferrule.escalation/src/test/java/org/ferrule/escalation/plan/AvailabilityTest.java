/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.escalation.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Technique;
import org.junit.jupiter.api.Test;

/** Set-ups that make a technique possible or impossible, read from the answers in all systems. */
class AvailabilityTest {
    private static final Technique ANY = Moves.technique("any", Axis.PROFILE, Moves.tries(2, 0.5));
    private static final SystemState SYSTEM = Cases.system("guide-6", "wire-190");

    private final Map<Set<String>, MoveAnswer> answers = new LinkedHashMap<>();

    private AvailabilityTest where(boolean possible, String... setups) {
        List<Lack> lacks = possible ? List.of() : List.of(new Lack.SetupImpossible("other"));
        answers.put(Set.of(setups), new MoveAnswer(ANY, SYSTEM, SYSTEM, Set.of(), List.of(), lacks));
        return this;
    }

    private Availability read(String... done) {
        return Availability.of(ANY, answers, Set.of(done));
    }

    @Test
    void whatIsPossibleEverywhereNeedsNothing() {
        Availability availability = where(true).where(true, "extension").read();
        assertTrue(availability.somewhere());
        assertEquals(Set.of(), availability.with());
        assertEquals(Set.of(), availability.without());
    }

    @Test
    void needsWhatAllSystemsHaveInWhichItIsPossible() {
        Availability availability = where(false).where(false, "wire").where(true, "extension")
                .where(true, "extension", "wire").read();
        assertEquals(Set.of("extension"), availability.with());
        assertEquals(Set.of(), availability.without());
        assertSame(answers.get(Set.of("extension")), availability.sample());
        assertEquals(Set.of(), read("extension").with(), "in place anyway");
    }

    /** Beside the second wire it is impossible; that more makes it so too says nothing new. */
    @Test
    void tellsTheFewestSetupsThatMakeItImpossible() {
        Availability availability = where(true).where(true, "extension").where(false, "wire")
                .where(false, "extension", "wire").read();
        assertEquals(Set.of(), availability.with());
        assertEquals(Set.of(Set.of("wire")), availability.without());
    }

    @Test
    void ofSeveralWaysTheOneWithTheFewestSetupsIsPlanned() {
        Availability availability = where(false).where(true, "extension").where(true, "wire")
                .where(false, "extension", "wire").read();
        assertEquals(Set.of("extension"), availability.with());
        assertEquals(Set.of(Set.of("wire")), availability.without());
    }

    @Test
    void whatIsPossibleNowhereShowsItsFirstAnswer() {
        Availability availability = where(false, "extension").where(false, "extension", "wire").read();
        assertFalse(availability.somewhere());
        assertSame(answers.get(Set.of("extension")), availability.sample());
    }
}
