/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.FitChart;
import org.ferrule.model.Grouping;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.Sorting;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.samples.GuidesAndBalloons;
import org.junit.jupiter.api.Test;

class ChartAssemblerTest {
    private final DeviceLibrary library = GuidesAndBalloons.library(6, 12);
    private final LibraryReader reader = new LibraryReader("large.devices.json", library);
    private final FitChart chart = GuidesAndBalloons.chart(6, 12);
    private final RuleSet rules = RuleTranslator.translate(GuidesAndBalloons.rules());
    private final ChartAssembler assembler = new ChartAssembler(List.of(new PassageCheck()));

    @Test
    void keepsDevicesAsListed() {
        chart.getInner().setSortBy(Sorting.AS_LISTED);
        chart.getInner().setGroupBy(Grouping.NONE);
        assertEquals(List.of("b0", "b1", "b2", "b3"), innerIds().subList(0, 4));
    }

    @Test
    void sortsNamesByTheNumbersInThem() {
        chart.getInner().setSortBy(Sorting.NAME);
        chart.getInner().setGroupBy(Grouping.NONE);
        assertEquals(List.of("b8", "b9", "b10", "b11"), innerIds().subList(8, 12));
    }

    @Test
    void groupsBySizeFromSmallToLarge() {
        chart.getOuter().setGroupBy(Grouping.SIZE);
        assertEquals(List.of("5 Fr", "5 Fr", "6 Fr", "6 Fr", "7 Fr", "8 Fr"), assemble().outerGroups());
    }

    @Test
    void takesAllDevicesOfAKindWhenNoneIsListed() {
        chart.getInner().getDevices().clear();
        chart.getInner().getKinds().add(DeviceKind.BALLOON_CATHETER);
        assertEquals(12, innerIds().size());
    }

    @Test
    void leavesHiddenDevicesOut() {
        chart.getInner().getHidden().add("b3");
        assertEquals(11, innerIds().size());
    }

    @Test
    void asksWhichOfTwoDevicesWithOneIdIsMeant() {
        Catalogue twice = Catalogue
                .of(List.of(reader, new LibraryReader("other.devices.json", GuidesAndBalloons.library(0, 1))));
        AssembledChart assembled = assembler.assemble(chart, twice, rules);
        assertTrue(assembled.problems().get(0).message().contains("other.devices.json!b0"),
                assembled.problems()::toString);
    }

    @Test
    void reachesToTheFarEndOfTheLesion() {
        chart.setPath(ModelFactory.eINSTANCE.createVesselPath());
        chart.setLesion(ModelFactory.eINSTANCE.createLesion());
        chart.getLesion().setAt(Dimension.parse("6 cm"));
        chart.getLesion().setLength(Dimension.parse("18 mm"));
        assertEquals(Optional.of(Length.ofMm(78)), assemble().question().reach());
    }

    @Test
    void prefersAReachThatIsStated() {
        reachesToTheFarEndOfTheLesion();
        chart.setConditions(ModelFactory.eINSTANCE.createConditions());
        chart.getConditions().setReach(Dimension.parse("9 cm"));
        assertEquals(Optional.of(Length.ofMm(90)), assemble().question().reach());
    }

    @Test
    void keepsTheObjectsOfUnchangedDevices() {
        AssembledChart before = assemble();
        AssembledChart after = assemble();
        assertSame(before.question().inner().get(0), after.question().inner().get(0));
        assertSame(before.question().outer().get(0).device(), after.question().outer().get(0).device());
        assertSame(before.question().solver(), after.question().solver());
    }

    private AssembledChart assemble() {
        return assembler.assemble(chart, Catalogue.of(List.of(reader)), rules);
    }

    private List<String> innerIds() {
        return assemble().inner().stream().map(d -> d.device().id()).toList();
    }
}
