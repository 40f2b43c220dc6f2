/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.samples;

import java.util.List;
import java.util.Locale;

import org.ferrule.model.Balloon;
import org.ferrule.model.Claim;
import org.ferrule.model.ClaimType;
import org.ferrule.model.ComplianceRow;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.Lumen;
import org.ferrule.model.LumenSection;
import org.ferrule.model.LumenUse;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ShaftSection;
import org.ferrule.model.Source;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Pressure;

/**
 * Makes libraries of any size: lines of forty balloons each, that state in their line what they have in common, and
 * guides by themselves; all of them invented, all of them from a source with a date.
 */
public final class LargeLibrary {

    private static final ModelFactory FACTORY = ModelFactory.eINSTANCE;
    private static final List<String> MAKERS = List.of("Osterbrook Devices", "Holmgard Guides", "Dunnerholt Balloons",
            "Varnholm Works", "Lindmoor Instruments", "Tarnfell Medical");
    private static final int LINE = 40;
    private static final int SOURCES = 50;

    private LargeLibrary() {
    }

    /** A library of so many devices, every fifth of them a guide. */
    public static DeviceLibrary of(int devices) {
        DeviceLibrary library = (DeviceLibrary) DocumentKind.DEVICES.create();
        library.setTitle("Library of " + devices + " devices");
        for (int i = 0; i < SOURCES; i++) {
            library.getSources().add(source(i));
        }
        for (int i = 0; i < devices; i++) {
            if (i % LINE == 0) {
                library.getLines().add(line(i / LINE));
            }
            library.getDevices().add(i % 5 == 4 ? guide(i) : balloon(i, i / LINE));
        }
        return library;
    }

    private static Source source(int number) {
        Source source = FACTORY.createSource();
        source.setId("ifu-" + number);
        source.setTitle("Instructions for use, number " + number + " (invented)");
        source.setDate(String.format(Locale.ROOT, "%d-%02d", 2016 + number % 10, 1 + number % 12));
        return source;
    }

    private static DeviceLine line(int number) {
        DeviceLine line = FACTORY.createDeviceLine();
        line.setId("line-" + number);
        line.setName("Balloon line " + number);
        line.setKind(DeviceKind.BALLOON_CATHETER);
        line.setMaker(MAKERS.get(number % MAKERS.size()));
        line.setEffectiveLength(Dimension.parse("142 cm"));
        line.setTakesWire(Dimension.parse("0.014 in"));
        line.setSource("ifu-" + number % SOURCES);
        line.getSections().add(section("tip", "0 mm", "4 mm", "0.43 mm"));
        line.getSections().add(section("balloon", "4 mm", null, null));
        line.getSections().add(section("distal shaft", null, "25 cm", "2.6 Fr"));
        line.getSections().add(section("hypotube", "25 cm", "142 cm", "1.9 Fr"));
        line.getLumens().add(WireLumen.create());
        line.getClaims().add(claim());
        return line;
    }

    private static Claim claim() {
        Claim claim = FACTORY.createClaim();
        claim.setType(ClaimType.MINIMUM_LUMEN);
        claim.setValue(Dimension.parse("0.056 in"));
        claim.getKinds().add(DeviceKind.GUIDE_CATHETER);
        return claim;
    }

    private static Device balloon(int number, int line) {
        int place = number % LINE;
        int length = 10 + 5 * (place % 4);
        String diameter = String.format(Locale.ROOT, "%.2f", 1.25 + 0.25 * (place / 4));
        Device device = FACTORY.createDevice();
        device.setId("balloon-" + number);
        device.setLine("line-" + line);
        device.setName("Balloon " + diameter + " x " + length + " mm, line " + line);
        device.setSize(diameter + " x " + length + " mm");
        device.setModel(String.format(Locale.ROOT, "B%05d", number));
        String end = 4 + length + " mm";
        device.getSections().add(section("balloon", null, end,
                String.format(Locale.ROOT, "%.2f mm", 0.58 + place * 0.01)));
        device.getSections().add(section("distal shaft", end, null, null));
        device.setBalloon(part(diameter, length));
        return device;
    }

    private static Balloon part(String diameter, int length) {
        Balloon balloon = FACTORY.createBalloon();
        balloon.setSection("balloon");
        balloon.setDiameter(Dimension.parse(diameter + " mm"));
        balloon.setLength(Dimension.parse(length + " mm"));
        balloon.setNominalPressure(Pressure.parse("8 atm"));
        balloon.setRatedBurstPressure(Pressure.parse("14 atm"));
        double nominal = Double.parseDouble(diameter);
        for (int atm : new int[] { 6, 8, 10, 14 }) {
            ComplianceRow row = FACTORY.createComplianceRow();
            row.setPressure(Pressure.parse(atm + " atm"));
            row.setDiameter(Dimension.parse(String.format(Locale.ROOT, "%.3f mm", nominal * (0.92 + 0.01 * atm))));
            balloon.getCompliance().add(row);
        }
        return balloon;
    }

    private static Device guide(int number) {
        Device device = FACTORY.createDevice();
        device.setId("guide-" + number);
        device.setName("Guide number " + number);
        device.setKind(DeviceKind.GUIDE_CATHETER);
        device.setMaker(MAKERS.get(number % MAKERS.size()));
        device.setModel(String.format(Locale.ROOT, "G%05d", number));
        device.setSize(5 + number % 4 + " Fr");
        device.setEffectiveLength(Dimension.parse("100 cm"));
        device.setSource("ifu-" + number % SOURCES);
        device.getSections().add(section("body", "0 mm", "100 cm",
                String.format(Locale.ROOT, "%.2f mm", 1.70 + 0.33 * (number % 4))));
        Lumen lumen = FACTORY.createLumen();
        lumen.setName("guide");
        lumen.setUse(LumenUse.WORKING);
        LumenSection section = FACTORY.createLumenSection();
        section.setId(Dimension.parse(String.format(Locale.ROOT, "0.%03d in min", 56 + 11 * (number % 4))));
        lumen.getSections().add(section);
        device.getLumens().add(lumen);
        return device;
    }

    private static ShaftSection section(String name, String from, String to, String diameter) {
        ShaftSection section = FACTORY.createShaftSection();
        section.setName(name);
        section.setFrom(from == null ? null : Dimension.parse(from));
        section.setTo(to == null ? null : Dimension.parse(to));
        section.setOd(diameter == null ? null : Dimension.parse(diameter));
        return section;
    }
}
