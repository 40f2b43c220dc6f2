/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.sample;

import static org.ferrule.fit.sample.Texts.printed;
import static org.ferrule.fit.sample.Texts.round;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;

/** A device in the making. */
public final class SampleDevice {
    private final String id;
    private final DeviceKind kind;
    private final List<ShaftSection> sections = new ArrayList<>();
    private final List<Lumen> lumens = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private String size = "";
    private Optional<Dimension> effectiveLength = Optional.empty();
    private Optional<Dimension> takesWire = Optional.empty();
    private boolean deploys;
    private Parts parts = Parts.NONE;

    private SampleDevice(String id, DeviceKind kind) {
        this.id = id;
        this.kind = kind;
    }

    public static SampleDevice device(String id, DeviceKind kind) {
        return new SampleDevice(id, kind);
    }

    /** A guide catheter of 6 Fr and 100 cm with that inner diameter. */
    public static SampleDevice guide(String id, String innerDiameter) {
        return device(id, DeviceKind.GUIDE_CATHETER).size("6 Fr").length("100 cm").working("100 cm", innerDiameter);
    }

    /** A device of one outer diameter all along. */
    public static SampleDevice rod(String id, DeviceKind kind, String effectiveLength, String outerDiameter) {
        return device(id, kind).length(effectiveLength).section("shaft", "0 mm", effectiveLength, outerDiameter);
    }

    /** A rapid-exchange balloon: tip, balloon of that profile, shaft of 0.8 mm to its port at 25 cm, hypotube. */
    public static SampleDevice balloon(String id, String profile, String hypotube) {
        return device(id, DeviceKind.BALLOON_CATHETER).length("142 cm").takesWire("0.014 in")
                .section("tip", "0 mm", "4 mm", "0.43 mm").folded("balloon", "4 mm", "23 mm", profile)
                .section("distal shaft", "23 mm", "25 cm", "0.8 mm").section("hypotube", "25 cm", "142 cm", hypotube)
                .sidePort("25 cm", "0.016 in");
    }

    public SampleDevice size(String designation) {
        size = designation;
        return this;
    }

    /** States the effective length. */
    public SampleDevice length(String text) {
        effectiveLength = printed(text);
        return this;
    }

    public SampleDevice takesWire(String text) {
        takesWire = printed(text);
        return this;
    }

    public SampleDevice deploys() {
        deploys = true;
        return this;
    }

    public SampleDevice claim(SampleClaim claim) {
        claims.add(claim.claim());
        return this;
    }

    public SampleDevice section(String name, String from, String to, String od) {
        return taper(name, from, to, od, od);
    }

    public SampleDevice taper(String name, String from, String to, String distal, String proximal) {
        return contour(name, from, to, round(distal), round(proximal));
    }

    public SampleDevice contour(String name, String from, String to, Contour distal, Contour proximal) {
        return add(name, from, to, new Contour[] { distal, proximal, distal, proximal }, AfterUse.UNCHANGED);
    }

    public SampleDevice oval(String name, String from, String to, String width, String height) {
        Contour oval = new Contour.Oval(Dimension.lenient(width), Dimension.lenient(height));
        return contour(name, from, to, oval, oval);
    }

    public SampleDevice bundle(String name, String from, String to, Contour.Member... members) {
        Contour bundle = new Contour.Bundle(List.of(members));
        return contour(name, from, to, bundle, bundle);
    }

    public static Contour.Member member(String x, String y, String diameter) {
        return new Contour.Member(Texts.length(x), Texts.length(y), Dimension.lenient(diameter));
    }

    /** A section with a crossing profile, which grows by use as the rule set says. */
    public SampleDevice folded(String name, String from, String to, String profile) {
        return profile(name, from, to, profile, profile, AfterUse.GROWS);
    }

    /** A section with a crossing profile and a stated profile after use. */
    public SampleDevice folded(String name, String from, String to, String profile, String after) {
        return profile(name, from, to, profile, after, AfterUse.STATED);
    }

    private SampleDevice profile(String name, String from, String to, String before, String after, AfterUse use) {
        return add(name, from, to, new Contour[] { round(before), round(before), round(after), round(after) }, use);
    }

    private SampleDevice add(String name, String from, String to, Contour[] outlines, AfterUse use) {
        sections.add(new ShaftSection(name, Texts.length(from), Texts.length(to), outlines[0], outlines[1],
                outlines[2], outlines[3], use, use != AfterUse.UNCHANGED, false, SourceRef.NONE));
        return this;
    }

    /** The section that was added last cannot bend. */
    public SampleDevice rigid() {
        ShaftSection s = sections.remove(sections.size() - 1);
        sections.add(new ShaftSection(s.name(), s.from(), s.to(), s.distal(), s.proximal(), s.distalAfter(),
                s.proximalAfter(), s.afterUse(), s.crossingProfile(), true, s.source()));
        return this;
    }

    public SampleDevice parts(Parts what) {
        parts = what;
        return this;
    }

    /** A working lumen called "lumen" from the hub to the tip, of one inner diameter. */
    public SampleDevice working(String wholeLength, String innerDiameter) {
        return lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", wholeLength).bore("0 mm", wholeLength,
                innerDiameter);
    }

    /** A wire lumen called "wire" from the hub to the tip, of one inner diameter. */
    public SampleDevice overTheWire(String wholeLength, String innerDiameter) {
        return lumen("wire", Lumen.Use.WIRE, Lumen.Opening.HUB, "0 mm", wholeLength).bore("0 mm", wholeLength,
                innerDiameter);
    }

    /** A wire lumen called "wire" from a side port at that station to the tip, of one inner diameter. */
    public SampleDevice sidePort(String at, String innerDiameter) {
        return lumen("wire", Lumen.Use.WIRE, Lumen.Opening.SIDE_PORT, "0 mm", at).bore("0 mm", at, innerDiameter);
    }

    /** Begins a lumen; {@link #bore} and {@link #taperedBore} add to it. */
    public SampleDevice lumen(String name, Lumen.Use use, Lumen.Opening opening, String distalAt, String proximalAt) {
        lumens.add(new Lumen(name, use, opening, Texts.length(distalAt), Texts.length(proximalAt), List.of()));
        return this;
    }

    public SampleDevice bore(String from, String to, String id) {
        return taperedBore(from, to, id, id);
    }

    public SampleDevice taperedBore(String from, String to, String proximal, String distal) {
        Lumen last = lumens.remove(lumens.size() - 1);
        List<LumenSection> more = new ArrayList<>(last.sections());
        more.add(new LumenSection("bore " + (more.size() + 1), Texts.length(from), Texts.length(to), printed(proximal),
                printed(distal), SourceRef.NONE));
        lumens.add(new Lumen(last.name(), last.use(), last.opening(), last.distalAt(), last.proximalAt(), more));
        return this;
    }

    public Device device() {
        return new Device(id, id, kind, size, effectiveLength, takesWire, sections, lumens, deploys, claims, parts);
    }
}
