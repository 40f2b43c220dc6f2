/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Puts devices for tests together; stations in millimetres. */
public final class DeviceMaker {
    private static final SourceRef SHEET = new SourceRef("Made-up data sheet", "2", "1");

    private final String id;
    private final String name;
    private final DeviceKind kind;
    private final String size;
    private final List<ShaftSection> sections = new ArrayList<>();
    private final List<Lumen> lumens = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private Optional<Dimension> length = Optional.empty();
    private Optional<Dimension> wire = Optional.empty();
    private boolean deploys;

    public DeviceMaker(String id, String name, DeviceKind kind, String size) {
        this.id = id;
        this.name = name;
        this.kind = kind;
        this.size = size;
    }

    public DeviceMaker length(String text) {
        length = Optional.of(Dimension.parse(text));
        return this;
    }

    public DeviceMaker takesWire(String text) {
        wire = Optional.of(Dimension.parse(text));
        return this;
    }

    public DeviceMaker deploys() {
        deploys = true;
        return this;
    }

    public DeviceMaker section(String section, double from, double to, String diameter) {
        return section(section, from, to, diameter, diameter, ShaftSection.AfterUse.UNCHANGED, false);
    }

    public DeviceMaker taper(String section, double from, double to, String distal, String proximal) {
        return section(section, from, to, distal, proximal, ShaftSection.AfterUse.UNCHANGED, false);
    }

    /** A folded balloon or crimped stent; a balloon grows by use. */
    public DeviceMaker profile(String section, double from, double to, String diameter, boolean grows) {
        return section(section, from, to, diameter, diameter,
                grows ? ShaftSection.AfterUse.GROWS : ShaftSection.AfterUse.UNCHANGED, true);
    }

    public DeviceMaker rigid(String section, double from, double to, String diameter) {
        Contour contour = round(diameter);
        sections.add(new ShaftSection(section, mm(from), mm(to), contour, contour, contour, contour,
                ShaftSection.AfterUse.UNCHANGED, false, true, SHEET));
        return this;
    }

    public DeviceMaker oval(String section, double from, double to, String width, String height) {
        Contour contour = new Contour.Oval(Dimension.parse(width), Dimension.parse(height));
        sections.add(ShaftSection.plain(section, mm(from), mm(to), contour));
        return this;
    }

    /** Discs whose centres lie along x. */
    public DeviceMaker discs(String section, double from, double to, List<String> diameters, List<Double> x) {
        List<Contour.Member> members = new ArrayList<>();
        for (int i = 0; i < diameters.size(); i++) {
            members.add(new Contour.Member(mm(x.get(i)), Length.ZERO, Dimension.parse(diameters.get(i))));
        }
        sections.add(ShaftSection.plain(section, mm(from), mm(to), new Contour.Bundle(members)));
        return this;
    }

    private DeviceMaker section(String section, double from, double to, String distal, String proximal,
            ShaftSection.AfterUse use, boolean profile) {
        Contour start = round(distal);
        Contour end = round(proximal);
        sections.add(new ShaftSection(section, mm(from), mm(to), start, end, start, end, use, profile, profile, SHEET));
        return this;
    }

    private static Contour round(String diameter) {
        return new Contour.Round(printed(diameter));
    }

    private static Optional<Dimension> printed(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(Dimension.lenient(text));
    }

    public DeviceMaker lumen(String lumen, Lumen.Use use, Lumen.Opening opening, double from, double to,
            String diameter) {
        LumenSection whole = new LumenSection("", Length.ZERO, mm(to - from), printed(diameter), printed(diameter),
                SHEET);
        lumens.add(new Lumen(lumen, use, opening, mm(from), mm(to), List.of(whole)));
        return this;
    }

    public DeviceMaker claim(Claim.Type type, String value, DeviceKind... partners) {
        claims.add(new Claim(type, printed(value), Set.of(partners), List.of(), List.of(), Optional.empty(),
                false, Set.of(Phase.IN), new SourceRef("Made-up instructions for use", "C", "3")));
        return this;
    }

    public Device make() {
        return new Device(id, name, kind, size, length, wire, sections, lumens, deploys, claims);
    }

    public static Length mm(double value) {
        return Length.of(Double.toString(value), LengthUnit.MILLIMETRE);
    }
}
