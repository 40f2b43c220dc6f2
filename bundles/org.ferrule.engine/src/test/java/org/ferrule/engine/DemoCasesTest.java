/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.RuleSet;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.shelf.stock.BelowPar;
import org.ferrule.shelf.stock.Item;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The techniques, the shelf and the cases that ship. */
class DemoCasesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 2);

    private final List<FitCheck> checks = Extensions.ofClassPath(getClass().getClassLoader()).checks();

    private static List<String> caseNames() {
        return DemoDocuments.names(".case.json");
    }

    private AssembledCase assembled(String name) {
        CaseDocument file = (CaseDocument) DemoDocuments.read(name);
        return new OpenCase(file,
                file.getLibraries().stream()
                        .map(path -> new LibraryReader(path, (DeviceLibrary) DemoDocuments.read(path))).toList(),
                (RuleSet) DemoDocuments.read(file.getRules()),
                (TechniqueLibrary) DemoDocuments.read(file.getTechniques()),
                Optional.of((ShelfDocument) DemoDocuments.read(file.getShelf()))).assemble(checks, DAY);
    }

    @ParameterizedTest
    @MethodSource("caseNames")
    void haveNothingThatCannotBePlannedWith(String name) {
        assertEquals(List.of(), assembled(name).problems());
    }

    @Test
    void askForEveryResourceAndForBothLadders() {
        List<AssembledCase> cases = caseNames().stream().map(this::assembled).toList();
        assertTrue(cases.size() >= 8);
        assertEquals(Set.of(Resource.values()),
                cases.stream().map(c -> c.file().aim().objective()).collect(Collectors.toSet()));
        assertEquals(2, cases.stream().map(c -> c.ladder().title()).distinct().count());
        assertTrue(cases.stream().map(AssembledCase::file).map(CaseFile::system)
                .anyMatch(system -> system.extension().isPresent()));
        assertTrue(cases.stream().anyMatch(c -> !c.file().log().isEmpty()));
    }

    @Test
    void tellWhereNothingOnTheLadderCanBeDone() {
        Plan plan = assembled("case-out-of-reach-6-fr.case.json").plan();
        assertFalse(plan.canGoOn());
        assertEquals(List.of("leave-without-stent"), plan.exits().stream().map(t -> t.id()).toList());
    }

    /** Reference of the fixed rule: the wire is seen in two views before anything else, in every ladder. */
    @Test
    void asksForTheTrueLumenInEveryLadder() {
        for (String name : List.of("case-small-budget-5-fr.case.json", "case-out-of-reach-6-fr.case.json")) {
            Ladder ladder = assembled(name).ladder();
            assertTrue(ladder.facts().get("true-lumen").contains("two orthogonal views"));
            assertTrue(ladder.techniques().stream().anyMatch(t -> t.advice().offLabel().isPresent()));
        }
    }

    /** No published share is a chance: the means of all tries come from labelled priors and counts. */
    @Test
    void labelEveryPriorAsAssumed() {
        for (String name : List.of("case-small-budget-5-fr.case.json", "case-out-of-reach-6-fr.case.json")) {
            assembled(name).ladder().techniques().stream().flatMap(t -> t.tries().stream())
                    .forEach(t -> assertEquals("assumed for teaching, not measured", t.chance().prior().label()));
        }
    }

    @Test
    void haveAShelfWithExpiredLastAndMissingUnits() {
        AssembledCase assembled = assembled("case-small-budget-5-fr.case.json");
        List<Item> items = assembled.stock().shelf().items();
        assertTrue(items.stream().mapToInt(i -> i.lots().size()).sum() >= 80);
        assertTrue(items.stream().anyMatch(i -> i.quantity() > 0 && i.usableOn(DAY) == 0));
        assertTrue(items.stream().anyMatch(i -> i.usableOn(DAY) == 1));
        assertTrue(assembled.stock().shelf().belowPar(DAY).stream().map(BelowPar::item).count() > 5);
        assertTrue(items.stream().flatMap(i -> i.di().stream()).allMatch(di -> di.startsWith("0952")));
        assertTrue(assembled.stock().ofEquipment("orbital console").isEmpty());
    }
}
