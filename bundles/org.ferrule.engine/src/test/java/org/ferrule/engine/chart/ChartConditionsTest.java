/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.Change;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Bend.Where;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.model.BendPlace;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Direction;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ThroughExtension;
import org.ferrule.model.VesselSegment;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;
import org.ferrule.samples.GuidesAndBalloons;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ChartConditionsTest {
    private static final ModelFactory FACTORY = ModelFactory.eINSTANCE;
    private final DeviceLibrary library = GuidesAndBalloons.library(3, 4);
    private final LibraryReader reader = new LibraryReader("large.devices.json", library);
    private final FitChart chart = GuidesAndBalloons.chart(3, 3);
    private final RuleSet rules = RuleTranslator.translate(GuidesAndBalloons.rules());
    private final ChartAssembler assembler = new ChartAssembler(List.of(new PassageCheck()));

    @BeforeEach
    void addConditions() {
        chart.setConditions(FACTORY.createConditions());
    }

    @Test
    void asksWithoutConditionsWhereNoneAreStated() {
        assertEquals(Conditions.NONE, conditions());
    }

    @Test
    void placesOccupantsWithTheirWires() {
        inside("b3", "-3 cm").setWire("g0");
        inside("large.devices.json!b2", null).setUsed(true);
        List<Occupant> inside = conditions().inside();
        assertEquals(Length.ofMm(-30), inside.get(0).tipAhead());
        assertEquals("b2", inside.get(1).device().device().id());
        assertEquals(Length.ZERO, inside.get(1).tipAhead());
        assertEquals(List.of(false, true), inside.stream().map(Occupant::used).toList());
        assertNotEquals(inside.get(0).device().wire(), inside.get(1).device().wire());
        assertEquals(List.of(), assemble().problems());
    }

    @Test
    void unchangedConditionsAreEqualFromOneAssemblyToTheNext() {
        inside("b3", "2 cm").setWire("g0");
        inside("b77", null);
        through("g1#main", "8 cm");
        assertEquals(conditions(), conditions());
    }

    @Test
    void editedOccupantIsAnotherCondition() {
        inside("b3", null);
        Conditions before = conditions();
        reader.changed(new Change(Change.Scope.LIBRARY, Optional.empty(), Optional.empty()));
        library.getDevices().get(6).getSections().get(1).setOd(Dimension.parse("1.11 mm"));
        assertNotEquals(before, conditions());
    }

    @Test
    void nothingIsKnownOfAnOccupantThatIsNotFound() {
        inside("b77", null);
        assertProblem("inside", "\"b77\"");
        assertNothingIsKnown("b77");
    }

    @Test
    void nothingIsKnownOfAnOccupantWhosePlaceCannotBeRead() {
        inside("b3", "near");
        assertProblem("inside", "\"near\"");
        assertNothingIsKnown("b3");
    }

    @Test
    void wireOfAnOccupantThatIsNotFoundIsNotKnown() {
        inside("b3", null).setWire("w-none");
        assertProblem("inside", "\"w-none\"");
        assertEquals(Optional.empty(), conditions().inside().get(0).device().wire().diameter());
    }

    @Test
    void placesAnExtension() {
        through("g1#main", "8 cm");
        assertEquals(Length.ofMm(80), conditions().through().orElseThrow().protrusion());
        assertEquals("main", conditions().through().orElseThrow().lumen().name());
    }

    @Test
    void somethingUnknownLiesWhereAnExtensionIsNotFoundOrHasNoSuchLumen() {
        ThroughExtension through = through("g1#second", null);
        assertProblem("through", "\"second\"");
        assertNothingIsKnown("g1#second");
        through.setExtension("g99");
        assertProblem("through", "\"g99\"");
        assertNothingIsKnown("g99");
    }

    @Test
    void refusesAnExtensionWhoseTubeWouldLeaveTheGuide() {
        through("g1", "100 cm");
        assertProblem("through", "1000 mm");
        assertNothingIsKnown("g1");
    }

    @Test
    void asksNothingOverAWireWithOthersInTheLumen() {
        inside("b3", null);
        chart.getConditions().setDirection(Direction.OVER_WIRE_TAIL);
        assertProblem("direction", "tip first only");
        assertEquals(List.of(), assemble().question().inner());
        assertEquals(List.of(), assemble().inner());
        assertEquals(3, assemble().question().outer().size());
    }

    @Test
    void takesTheBendsOfTheConditionsAndThoseOfThePathUpToTheLesion() {
        bend(BendPlace.LUMEN, "20 mm");
        chart.setPath(FACTORY.createVesselPath());
        chart.getPath().getSegments().addAll(List.of(segment("30 mm", "15 mm"), segment("40 mm", null),
                segment("50 mm", "10 mm")));
        chart.setLesion(FACTORY.createLesion());
        chart.getLesion().setAt(Dimension.parse("50 mm"));
        chart.getLesion().setLength(Dimension.parse("20 mm"));
        assertEquals(List.of(new Bend(Where.VESSEL, Length.ofMm(15), Optional.of(BigDecimal.TEN)),
                new Bend(Where.LUMEN, Length.ofMm(20), Optional.empty())), conditions().bends());
    }

    @Test
    void vesselIsAsWideAsTheBendOrItsSegmentSays() {
        bend(BendPlace.VESSEL, "20 mm").setVesselDiameter(Dimension.parse("2.5..3 mm"));
        chart.setPath(FACTORY.createVesselPath());
        chart.getPath().getSegments().add(segment("30 mm", "15 mm"));
        chart.getPath().getSegments().get(0).setDiameter(Dimension.parse("3.5 mm"));
        assertEquals(List.of(Optional.of(Length.ofMm(3.5)), Optional.of(Length.ofMm(2.5))), widths());
    }

    @Test
    void vesselOfUnreadableDiameterStillBends() {
        bend(BendPlace.VESSEL, "20 mm").setVesselDiameter(Dimension.lenient("wide"));
        assertProblem("bends", "wide");
        assertEquals("vesselDiameter", assemble().problems().get(0).part().orElseThrow().key());
        assertEquals(List.of(Optional.empty()), widths());
    }

    @Test
    void lumenHasNoOtherDiameterThanItsDevice() {
        bend(BendPlace.LUMEN, "20 mm").setVesselDiameter(Dimension.parse("3 mm"));
        assertEquals(List.of(Optional.empty()), widths());
    }

    private List<Optional<Length>> widths() {
        return conditions().bends().stream().map(Bend::vessel).toList();
    }

    @Test
    void bendOfTheLumenThatCannotBeReadLeavesNothingKnown() {
        bend(BendPlace.LUMEN, "0 mm");
        assertProblem("bends", "0 mm");
        assertNothingIsKnown("a bend of the lumen");
    }

    @Test
    void bendOfTheVesselThatCannotBeReadIsAProblemThatDecidesNothing() {
        bend(BendPlace.VESSEL, "steep");
        assertProblem("bends", "steep");
        assertTrue(conditions().alone());
    }

    @Test
    void saysThatDevicesGoInAfterUse() {
        chart.getConditions().setAfterInflation(true);
        assertTrue(conditions().afterInflation());
    }

    private void assertProblem(String place, String part) {
        ChartProblem problem = assemble().problems().get(0);
        assertEquals(place, problem.place());
        assertTrue(problem.message().contains(part), problem::message);
    }

    /** The question that is asked is not the easier one without the condition. */
    private void assertNothingIsKnown(String name) {
        Conditions conditions = conditions();
        assertFalse(conditions.alone());
        assertEquals(Optional.empty(), conditions.through());
        Occupant occupant = conditions.inside().get(0);
        assertEquals(name, occupant.device().device().id());
        assertTrue(occupant.device().outline(Phase.IN).stream().allMatch(s -> s.diameter().isEmpty()));
        Map<Verdict, Integer> counts = FitMatrix.solve(assemble().question(), Progress.SILENT).counts();
        assertEquals(9, counts.get(Verdict.UNKNOWN) + counts.get(Verdict.BLOCKED));
    }

    private Conditions conditions() {
        return assemble().question().conditions();
    }

    private AssembledChart assemble() {
        return assembler.assemble(chart, Catalogue.of(List.of(reader)), rules);
    }

    private org.ferrule.model.Occupant inside(String device, String ahead) {
        org.ferrule.model.Occupant occupant = FACTORY.createOccupant();
        occupant.setDevice(device);
        occupant.setTipAhead(ahead == null ? null : Offset.lenient(ahead));
        chart.getConditions().getInside().add(occupant);
        return occupant;
    }

    private ThroughExtension through(String extension, String protrusion) {
        ThroughExtension through = FACTORY.createThroughExtension();
        through.setExtension(extension);
        through.setProtrusion(protrusion == null ? null : Offset.lenient(protrusion));
        chart.getConditions().setThrough(through);
        return through;
    }

    private org.ferrule.model.Bend bend(BendPlace where, String radius) {
        org.ferrule.model.Bend bend = FACTORY.createBend();
        bend.setWhere(where);
        bend.setRadius(Dimension.lenient(radius));
        chart.getConditions().getBends().add(bend);
        return bend;
    }

    private static VesselSegment segment(String length, String radius) {
        VesselSegment segment = FACTORY.createVesselSegment();
        segment.setLength(Dimension.parse(length));
        if (radius != null) {
            segment.setBendRadius(Dimension.parse(radius));
            segment.setBendAngleDegrees(BigDecimal.TEN);
        }
        return segment;
    }
}
