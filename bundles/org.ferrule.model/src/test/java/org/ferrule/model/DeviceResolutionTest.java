/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Pressure;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DeviceResolutionTest {

    private static final ModelFactory FACTORY = ModelFactory.eINSTANCE;

    private final DeviceLibrary library = (DeviceLibrary) DocumentKind.DEVICES.create();
    private final DeviceLine line = FACTORY.createDeviceLine();
    private final Device device = FACTORY.createDevice();

    @BeforeEach
    void fillLibrary() {
        line.setId("alder");
        device.setId("alder-6");
        device.setLine("alder");
        library.getLines().add(line);
        library.getDevices().add(device);
    }

    @Test
    void inheritsWhatTheDeviceDoesNotState() {
        line.setMaker("Example Makers");
        line.setKind(DeviceKind.GUIDE_CATHETER);
        line.setEffectiveLength(Dimension.parse("100 cm"));
        Device resolved = resolved();
        assertEquals("Example Makers", resolved.getMaker());
        assertEquals(DeviceKind.GUIDE_CATHETER, resolved.getKind());
        assertTrue(resolved.isSetKind());
        assertEquals("100 cm", resolved.getEffectiveLength().text());
    }

    @Test
    void keepsWhatTheDeviceStates() {
        line.setMaker("Example Makers");
        device.setMaker("Other Makers");
        assertEquals("Other Makers", resolved().getMaker());
    }

    @Test
    void keepsAStatedKindThatIsTheDefault() {
        line.setKind(DeviceKind.SNARE);
        device.setKind(DeviceKind.OTHER);
        assertEquals(DeviceKind.OTHER, resolved().getKind());
    }

    @Test
    void doesNotInheritIdsAndUnknownKeys() {
        line.getExtras().add(FACTORY.createExtraKey());
        assertEquals("alder-6", resolved().getId());
        assertTrue(resolved().getExtras().isEmpty());
    }

    @Test
    void refinesSectionsOfTheSameNameAndKeepsTheOthers() {
        line.getSections().addAll(List.of(section("tip", "1.0 mm"), section("shaft", "1.1 mm")));
        device.getSections().addAll(List.of(section("hub", "3 mm"), section("shaft", "1.2 mm")));
        line.getSections().get(1).setRigid(true);
        List<ShaftSection> sections = resolved().getSections();
        assertEquals(List.of("tip 1.0 mm", "shaft 1.2 mm", "hub 3 mm"),
                sections.stream().map(s -> s.getName() + " " + s.getOd()).toList());
        assertTrue(sections.get(1).isRigid());
    }

    @Test
    void matchesPartsWithoutNamesInTheirOrder() {
        line.getLumens().add(lumen(null, "0.070 in", "0.071 in"));
        device.getLumens().add(lumen(null, "0.080 in"));
        List<LumenSection> sections = resolved().getLumens().get(0).getSections();
        assertEquals(List.of("0.080 in", "0.071 in"), sections.stream().map(s -> s.getId().text()).toList());
    }

    @Test
    void addsMarkersAndClaimsOfBoth() {
        line.getMarkers().add(marker("1 mm"));
        device.getMarkers().add(marker("20 mm"));
        assertEquals(List.of("1 mm", "20 mm"), resolved().getMarkers().stream().map(m -> m.getAt().text()).toList());
    }

    @Test
    void completesASinglePart() {
        line.setBalloon(FACTORY.createBalloon());
        line.getBalloon().setNominalPressure(Pressure.parse("8 atm"));
        line.getBalloon().setDiameter(Dimension.parse("2 mm"));
        device.setBalloon(FACTORY.createBalloon());
        device.getBalloon().setDiameter(Dimension.parse("3 mm"));
        assertEquals("8 atm", resolved().getBalloon().getNominalPressure().text());
        assertEquals("3 mm", resolved().getBalloon().getDiameter().text());
    }

    @Test
    void replacesAComplianceTable() {
        line.setBalloon(FACTORY.createBalloon());
        line.getBalloon().getCompliance().addAll(List.of(row("8 atm"), row("10 atm")));
        device.setBalloon(FACTORY.createBalloon());
        device.getBalloon().getCompliance().add(row("12 atm"));
        assertEquals(1, resolved().getBalloon().getCompliance().size());
    }

    @Test
    void doesNotMixWaysToGiveACrossSection() {
        line.getSections().add(section("shaft", "1.1 mm"));
        ShaftSection oval = section("shaft", null);
        oval.setOval(FACTORY.createOval());
        device.getSections().add(oval);
        assertNull(resolved().getSections().get(0).getOd());
    }

    @Test
    void inheritsATaperBesideAnOwnDistalDiameter() {
        line.getSections().add(section("shaft", "1.1 mm"));
        line.getSections().get(0).setOdProximal(Dimension.parse("1.3 mm"));
        device.getSections().add(section("shaft", "1.2 mm"));
        assertEquals("1.3 mm", resolved().getSections().get(0).getOdProximal().text());
    }

    @Test
    void inheritsSourcePageAndNoteOnlyTogether() {
        line.setSource("catalogue");
        line.setPage("7");
        assertEquals("7", resolved().getPage());
        device.setSource("label");
        assertNull(resolved().getPage());
    }

    @Test
    void changesNeitherTheDeviceNorItsLine() {
        line.getSections().add(section("shaft", "1.1 mm"));
        DeviceLibrary before = EcoreUtil.copy(library);
        resolved().getSections().clear();
        assertTrue(EcoreUtil.equals(before, library));
    }

    @Test
    void standsForItselfWithoutALine() {
        device.setLine("birch");
        line.setMaker("Example Makers");
        ResolvedDevice resolved = DeviceResolution.resolve(device);
        assertNull(resolved.device().getMaker());
        assertTrue(resolved.line().isEmpty());
        assertFalse(resolved.isInherited(resolved.device(), Literals.DEVICE_PARTS__MAKER));
    }

    @Test
    void tellsWhoStatesAValue() {
        line.getSections().addAll(List.of(section("tip", "1.0 mm"), section("shaft", "1.1 mm")));
        line.getSections().get(1).setTo(Dimension.parse("1500 mm"));
        device.getSections().add(section("shaft", "1.2 mm"));
        ResolvedDevice resolved = DeviceResolution.resolve(device);
        ShaftSection tip = resolved.device().getSections().get(0);
        ShaftSection shaft = resolved.device().getSections().get(1);
        assertSame(line.getSections().get(1), resolved.statedBy(shaft, Literals.SHAFT_SECTION__TO));
        assertSame(device.getSections().get(0), resolved.statedBy(shaft, Literals.SHAFT_SECTION__OD));
        assertSame(line.getSections().get(0), resolved.statedBy(tip, Literals.SHAFT_SECTION__OD));
        assertTrue(resolved.isInherited(tip));
        assertTrue(resolved.isInherited(shaft, Literals.SHAFT_SECTION__TO));
        assertFalse(resolved.isInherited(shaft, Literals.SHAFT_SECTION__OD));
        assertThrows(IllegalArgumentException.class, () -> resolved.original(device));
    }

    @Test
    void findsTheSourceWhereTheValueIsStated() {
        library.getSources().addAll(List.of(source("catalogue"), source("label"), source("bench")));
        line.setSource("catalogue");
        line.getSections().addAll(List.of(section("tip", "1.0 mm"), section("shaft", "1.1 mm")));
        device.getSections().add(section("shaft", "1.2 mm"));
        assertEquals("catalogue", sourceOfOd(0));
        assertEquals("catalogue", sourceOfOd(1), "a device without a source speaks by its line's");
        device.setSource("label");
        assertEquals("catalogue", sourceOfOd(0), "what the line states stays the line's");
        assertEquals("label", sourceOfOd(1));
        device.getSections().get(0).setSource("bench");
        assertEquals("bench", sourceOfOd(1));
    }

    private String sourceOfOd(int section) {
        ResolvedDevice resolved = DeviceResolution.resolve(device);
        return resolved.source(resolved.device().getSections().get(section), Literals.SHAFT_SECTION__OD).orElseThrow()
                .getId();
    }

    private Device resolved() {
        return DeviceResolution.resolve(device).device();
    }

    private static Source source(String id) {
        Source source = FACTORY.createSource();
        source.setId(id);
        return source;
    }

    private static ShaftSection section(String name, String od) {
        ShaftSection section = FACTORY.createShaftSection();
        section.setName(name);
        section.setOd(od == null ? null : Dimension.parse(od));
        return section;
    }

    private static Lumen lumen(String name, String... ids) {
        Lumen lumen = FACTORY.createLumen();
        lumen.setName(name);
        for (String id : ids) {
            LumenSection section = FACTORY.createLumenSection();
            section.setId(Dimension.parse(id));
            lumen.getSections().add(section);
        }
        return lumen;
    }

    private static Marker marker(String at) {
        Marker marker = FACTORY.createMarker();
        marker.setAt(Dimension.parse(at));
        return marker;
    }

    private static ComplianceRow row(String pressure) {
        ComplianceRow row = FACTORY.createComplianceRow();
        row.setPressure(Pressure.parse(pressure));
        return row;
    }

    @Test
    void partsWithoutNamesAreStatedAllOrNone() {
        assertTrue(DeviceResolution.isStatedWhole(ModelPackage.Literals.BALLOON__COMPLIANCE));
        assertTrue(DeviceResolution.isStatedWhole(ModelPackage.Literals.SHAFT_SECTION__DISCS));
        assertFalse(DeviceResolution.isStatedWhole(ModelPackage.Literals.DEVICE_PARTS__SECTIONS));
        assertFalse(DeviceResolution.isStatedWhole(ModelPackage.Literals.LUMEN__SECTIONS));
        assertFalse(DeviceResolution.isStatedWhole(ModelPackage.Literals.DEVICE_PARTS__CLAIMS));
        assertFalse(DeviceResolution.isStatedWhole(ModelPackage.Literals.DEVICE_PARTS__BALLOON));
    }
}
