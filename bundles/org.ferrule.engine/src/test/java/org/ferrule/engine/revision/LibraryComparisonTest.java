/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.engine.revision.Difference.Kind;
import org.ferrule.model.Balloon;
import org.ferrule.model.ComplianceRow;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Pressure;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Two revisions of a library, compared by device and value. */
class LibraryComparisonTest {

    private DeviceLibrary before;
    private DeviceLibrary after;

    @BeforeEach
    void twoOfTheSame() {
        before = ModelFactory.eINSTANCE.createDeviceLibrary();
        before.getDevices().addAll(List.of(device("a"), device("b"), device("c")));
        after = EcoreUtil.copy(before);
    }

    private static Device device(String id) {
        Device device = ModelFactory.eINSTANCE.createDevice();
        device.setId(id);
        device.getSections().add(section("tip", "0.70 mm max"));
        device.getSections().add(section("shaft", "0.90 mm"));
        return device;
    }

    private static ShaftSection section(String name, String od) {
        ShaftSection section = ModelFactory.eINSTANCE.createShaftSection();
        section.setName(name);
        section.setOd(Dimension.parse(od));
        return section;
    }

    private List<Difference> differences() {
        return LibraryComparison.of(before, after);
    }

    private Difference only() {
        assertEquals(1, differences().size(), differences().toString());
        return differences().get(0);
    }

    @Test
    void equalLibrariesDoNotDiffer() {
        assertEquals(List.of(), differences());
    }

    @Test
    void changedDimensionIsToldWithItsGrowth() {
        after.getDevices().get(1).getSections().get(0).setOd(Dimension.parse("0.72 mm max"));
        Difference change = only();
        assertEquals(Kind.CHANGED, change.kind());
        assertSame(after.getDevices().get(1), change.entry());
        assertSame(Literals.SHAFT_SECTION__OD, change.feature());
        assertEquals(Optional.of(Dimension.parse("0.70 mm max")), change.valueBefore());
        assertEquals(Optional.of(Dimension.parse("0.72 mm max")), change.valueAfter());
        assertEquals(Optional.of(Length.of("0.02", LengthUnit.MILLIMETRE)), change.growth());
        assertFalse(change.changesMeaning());
    }

    @Test
    void anotherUnitIsNoGrowthAndAnotherWordIsAnotherMeaning() {
        after.getDevices().get(0).getSections().get(1).setOd(Dimension.parse("2.7 Fr min"));
        assertEquals(Optional.of(Length.ZERO), only().growth());
        assertTrue(only().changesMeaning());
    }

    @Test
    void unreadableFigureHasNoGrowth() {
        after.getDevices().get(0).getSections().get(1).setOd(Dimension.lenient("0,9 mm"));
        assertEquals(Optional.empty(), only().growth());
        assertFalse(only().changesMeaning());
    }

    @Test
    void valueThatIsNoLongerStatedIsAChange() {
        after.getDevices().get(0).getSections().get(1).setOd(null);
        assertEquals(Optional.empty(), only().valueAfter());
        assertEquals(Optional.of(Dimension.parse("0.90 mm")), only().valueBefore());
    }

    @Test
    void devicesThatCameAndWentAreToldWhole() {
        after.getDevices().remove(1);
        after.getDevices().add(device("d"));
        assertEquals(List.of(Kind.ADDED, Kind.REMOVED), differences().stream().map(Difference::kind).toList());
        assertSame(after.getDevices().get(2), differences().get(0).part().orElseThrow());
        assertSame(before.getDevices().get(1), differences().get(1).entry());
    }

    @Test
    void orderIsNoDifference() {
        after.getDevices().move(0, 2);
        after.getDevices().get(1).getSections().move(0, 1);
        assertEquals(List.of(), differences());
    }

    @Test
    void sectionsAreTheSameByName() {
        after.getDevices().get(0).getSections().add(0, section("hub", "2 mm"));
        Difference addition = only();
        assertEquals(Kind.ADDED, addition.kind());
        assertSame(after.getDevices().get(0), addition.entry());
        assertSame(before.getDevices().get(0), addition.before());
    }

    @Test
    void rowInTheMiddleOfATableLeavesTheOthersAlone() {
        before.getDevices().get(0).setBalloon(balloon("8 atm", "16 atm"));
        after.getDevices().get(0).setBalloon(balloon("8 atm", "12 atm", "16 atm"));
        assertEquals(Kind.ADDED, only().kind());
        ComplianceRow row = (ComplianceRow) only().part().orElseThrow();
        assertEquals("12 atm", row.getPressure().text());
    }

    private static Balloon balloon(String... pressures) {
        Balloon balloon = ModelFactory.eINSTANCE.createBalloon();
        for (String pressure : pressures) {
            ComplianceRow row = ModelFactory.eINSTANCE.createComplianceRow();
            row.setPressure(Pressure.parse(pressure));
            row.setDiameter(Dimension.parse("2.0 mm"));
            balloon.getCompliance().add(row);
        }
        return balloon;
    }

    @Test
    void doubleIdsGoInTheirOrder() {
        before.getDevices().get(2).setId("a");
        after.getDevices().get(2).setId("a");
        after.getDevices().get(2).setName("third");
        assertSame(before.getDevices().get(2), only().before());
    }

    @Test
    void titleOfTheLibraryIsAboutTheDocument() {
        after.setTitle("another");
        assertSame(after, only().entry());
    }
}
