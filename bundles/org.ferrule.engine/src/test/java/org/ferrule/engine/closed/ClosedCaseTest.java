/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.ferrule.escalation.technique.Resource;
import org.ferrule.model.AttemptOutcome;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.Setup;
import org.ferrule.model.TechniqueLibrary;
import org.junit.jupiter.api.Test;

class ClosedCaseTest {

    private static List<String> endings(ClosedCase closed, int step) {
        return closed.plan().get(step).endings().stream().map(Ending::word).toList();
    }

    @Test
    void eachStepSaysWhatCameOfIt() {
        ClosedCase closed = new ClosedCases().planned("small", "Small balloon").planned("burr", "Burr")
                .planned("laser", "Laser").planned("last", "Last").logged("small", AttemptOutcome.FAILED, 3)
                .logged("burr", AttemptOutcome.GIVEN_UP, 1).logged("laser", null, 1).read();
        assertEquals(List.of("failed"), endings(closed, 0));
        assertEquals(List.of("given up"), endings(closed, 1));
        assertEquals(List.of("not stated"), endings(closed, 2));
        assertEquals(List.of(), endings(closed, 3));
    }

    @Test
    void triesOfOneTechniqueGoToItsStepsInTheirOrder() {
        ClosedCase closed = new ClosedCases().planned("small", "Small balloon").planned("burr", "Burr")
                .planned("small", "Small balloon").logged("small", AttemptOutcome.FAILED, 3)
                .logged("small", AttemptOutcome.GIVEN_UP, 3).logged("small", AttemptOutcome.CROSSED, 3).read();
        assertEquals(List.of("failed"), endings(closed, 0));
        assertEquals(List.of(), endings(closed, 1));
        assertEquals(List.of("given up", "crossed"), endings(closed, 2), "what is over goes to the last");
    }

    @Test
    void aSetUpThatSucceededIsInPlace() {
        Setup anchor = ModelFactory.eINSTANCE.createSetup();
        anchor.setId("anchor");
        TechniqueLibrary techniques = ModelFactory.eINSTANCE.createTechniqueLibrary();
        techniques.getSetups().add(anchor);
        ClosedCases cases = new ClosedCases().planned("anchor", "Anchor").logged("anchor", AttemptOutcome.CROSSED, 2);
        assertEquals(List.of("crossed"), endings(cases.read(), 0), "nobody knows that it is a set-up");
        ClosedCase closed = ClosedCase.of(cases.file(),
                new RecordNames(List.of(), Optional.of(techniques), Optional.empty()), List.of());
        assertEquals(List.of("in place"), endings(closed, 0));
    }

    @Test
    void equipmentHasTheLotsThatWereOpenedForThatStep() {
        ClosedCase closed = new ClosedCases().planned("small", "Small balloon", "balloon-150")
                .planned("again", "Again", "balloon-150").opened("balloon-150", "item-7", "L1")
                .opened("balloon-150", "item-7", "L2").logged("small", AttemptOutcome.FAILED, 3, "item-7:L1")
                .logged("again", AttemptOutcome.FAILED, 3, "item-7:L2").read();
        assertEquals(List.of("L1"), lots(closed, 0));
        assertEquals(List.of("L2"), lots(closed, 1));
        assertEquals("balloon-150", closed.plan().get(0).equipment().get(0).name(), "its id: no library is there");
    }

    private static List<String> lots(ClosedCase closed, int step) {
        return closed.plan().get(step).equipment().get(0).opened().stream().map(UsedDevice::lot).toList();
    }

    @Test
    void whatWasDoneOutsideThePlanIsToldAsSuch() {
        ClosedCase closed = new ClosedCases().planned("small", "Small balloon")
                .logged("small", AttemptOutcome.FAILED, 3).logged("else", AttemptOutcome.CROSSED, 3).read();
        assertTrue(closed.log().get(0).planned());
        assertFalse(closed.log().get(1).planned());
        assertEquals("Small balloon", closed.log().get(0).name());
        assertEquals("else", closed.log().get(1).name());
    }

    @Test
    void totalsAreExactAndMeasuredAgainstTheBudget() {
        ClosedCases cases = new ClosedCases().budget("0.1", "3.3").logged("a", AttemptOutcome.FAILED, 1)
                .logged("b", AttemptOutcome.FAILED, 2);
        cases.file().getLog().get(0).setMinutes(new BigDecimal("1.2"));
        ResourceTotal time = total(cases.read(), Resource.TIME);
        assertEquals(new BigDecimal("3.3"), time.total());
        assertFalse(time.exceeded(), "used up is not exceeded");
        cases.file().getLog().get(1).setMinutes(new BigDecimal("2.01"));
        assertTrue(total(cases.read(), Resource.TIME).exceeded());
        assertFalse(total(cases.read(), Resource.DOSE).exceeded(), "no budget");
    }

    private static ResourceTotal total(ClosedCase closed, Resource resource) {
        return closed.totals().stream().filter(total -> total.resource() == resource).findFirst().orElseThrow();
    }

    @Test
    void anOpenCaseHasNoRecord() {
        ClosedCases cases = new ClosedCases();
        cases.file().setClosing(null);
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, cases::read);
        assertTrue(e.getMessage().contains("A case"), e::getMessage);
    }
}
