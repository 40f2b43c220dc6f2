/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.samples;

import org.ferrule.model.Axis;
import org.ferrule.model.Balloon;
import org.ferrule.model.Claim;
import org.ferrule.model.ClaimType;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.FitChart;
import org.ferrule.model.FigureClass;
import org.ferrule.model.Lumen;
import org.ferrule.model.LumenSection;
import org.ferrule.model.LumenUse;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.RuleSet;
import org.ferrule.model.ShaftSection;
import org.ferrule.model.Span;
import org.ferrule.quantity.Dimension;

/** Makes documents of any size: guides with lumens, and rapid-exchange balloons that go through them. */
public final class GuidesAndBalloons {
    private static final ModelFactory FACTORY = ModelFactory.eINSTANCE;

    private GuidesAndBalloons() {
    }

    /** A library of guides g0, g1, ... and balloons b0, b1, ... */
    public static DeviceLibrary library(int guides, int balloons) {
        DeviceLibrary library = (DeviceLibrary) DocumentKind.DEVICES.create();
        for (int i = 0; i < guides; i++) {
            library.getDevices().add(guide(i));
        }
        for (int i = 0; i < balloons; i++) {
            library.getDevices().add(balloon(i));
        }
        return library;
    }

    /** A rule set with all spans that these devices need. */
    public static RuleSet rules() {
        RuleSet rules = (RuleSet) DocumentKind.RULES.create();
        rules.setTitle("test rules");
        for (FigureClass figure : FigureClass.values()) {
            Span span = FACTORY.createSpan();
            span.setFigure(figure);
            span.setBelow(mm("0.01"));
            span.setAbove(mm("0.01"));
            rules.getSpans().add(span);
        }
        rules.getClearances().add(FACTORY.createClearanceRule());
        rules.getClearances().get(0).setRequired(mm("0.03"));
        rules.getAfterUse().add(FACTORY.createAfterUseRule());
        rules.getAfterUse().get(0).setGrowthLow(new java.math.BigDecimal("1.1"));
        rules.getAfterUse().get(0).setGrowthCentre(new java.math.BigDecimal("1.2"));
        rules.getAfterUse().get(0).setGrowthHigh(new java.math.BigDecimal("1.3"));
        return rules;
    }

    /** A chart of the first guides and balloons. */
    public static FitChart chart(int guides, int balloons) {
        FitChart chart = (FitChart) DocumentKind.CHART.create();
        chart.getLibraries().add("large.devices.json");
        chart.setRules("test.rules.json");
        chart.setOuter(axis("g", guides));
        chart.setInner(axis("b", balloons));
        return chart;
    }

    private static Axis axis(String prefix, int count) {
        Axis axis = FACTORY.createAxis();
        for (int i = 0; i < count; i++) {
            axis.getDevices().add(prefix + i);
        }
        return axis;
    }

    private static Device guide(int i) {
        Device guide = device("g" + i, DeviceKind.GUIDE_CATHETER, "100 cm");
        guide.setSize((5 + i % 4) + " Fr");
        guide.getSections().add(section("shaft", "0 cm", "100 cm", mm(2.0 + i % 4 * 0.33)));
        Lumen lumen = FACTORY.createLumen();
        lumen.setName("main");
        lumen.setUse(LumenUse.WORKING);
        LumenSection section = FACTORY.createLumenSection();
        section.setId(Dimension.parse(String.format(java.util.Locale.ROOT, "0.%03d in min", 56 + i % 36)));
        lumen.getSections().add(section);
        guide.getLumens().add(lumen);
        return guide;
    }

    private static Device balloon(int i) {
        Device balloon = device("b" + i, DeviceKind.BALLOON_CATHETER, "142 cm");
        balloon.setTakesWire(Dimension.parse("0.014 in"));
        balloon.getSections().add(section("tip", "0 mm", "3 mm", mm(0.42)));
        balloon.getSections().add(section("balloon", "3 mm", "23 mm", mm(0.6 + i % 90 * 0.01)));
        balloon.getSections().add(section("distal shaft", "23 mm", "25 cm", mm(0.85 + i % 7 * 0.02)));
        balloon.getSections().add(section("hypotube", "25 cm", "142 cm", mm(0.62 + i % 9 * 0.05)));
        Balloon part = FACTORY.createBalloon();
        part.setSection("balloon");
        balloon.setBalloon(part);
        balloon.getLumens().add(WireLumen.create());
        Claim claim = FACTORY.createClaim();
        claim.setType(ClaimType.MINIMUM_LUMEN);
        claim.setValue(Dimension.parse("0.066 in"));
        claim.getKinds().add(DeviceKind.GUIDE_CATHETER);
        if (i % 3 == 0) {
            balloon.getClaims().add(claim);
        }
        return balloon;
    }

    private static Device device(String id, DeviceKind kind, String length) {
        Device device = FACTORY.createDevice();
        device.setId(id);
        device.setName(id);
        device.setKind(kind);
        device.setEffectiveLength(Dimension.parse(length));
        return device;
    }

    private static ShaftSection section(String name, String from, String to, Dimension diameter) {
        ShaftSection section = FACTORY.createShaftSection();
        section.setName(name);
        section.setFrom(Dimension.parse(from));
        section.setTo(Dimension.parse(to));
        section.setOd(diameter);
        return section;
    }

    private static Dimension mm(double value) {
        return mm(String.format(java.util.Locale.ROOT, "%.2f", value));
    }

    private static Dimension mm(String value) {
        return Dimension.parse(value + " mm");
    }
}
