/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * A random device of any kind: constant and tapered sections with gaps and overlaps, ovals, bundles, side ports, figures
 * that are missing or cannot be read. Stations and diameters come from few values, so that ties are usual.
 */
final class RandomDevice {
    private static final Length STEP = new Length(5_000_000);
    private static final List<DeviceKind> OUTER = List.of(DeviceKind.GUIDE_CATHETER, DeviceKind.GUIDE_CATHETER,
            DeviceKind.GUIDE_EXTENSION, DeviceKind.MICROCATHETER, DeviceKind.INTRODUCER_SHEATH);
    private static final List<DeviceKind> INNER = List.of(DeviceKind.BALLOON_CATHETER, DeviceKind.BALLOON_CATHETER,
            DeviceKind.STENT_SYSTEM, DeviceKind.GUIDEWIRE, DeviceKind.MICROCATHETER, DeviceKind.ROTATIONAL_BURR);
    private static final List<String> SIZES = List.of("", "6 Fr", "7 Fr");

    private final Random random;
    /** How often a figure is missing: one in so many. */
    private final int missingInOf;
    private final int mostSections;
    /** The least bore in millimetres. */
    private final double narrowest;

    private RandomDevice(Random random) {
        this.random = random;
        this.missingInOf = random.nextInt(3) == 0 ? 6 : 200;
        this.mostSections = random.nextInt(3) == 0 ? 9 : 3;
        this.narrowest = random.nextInt(3) == 0 ? 0.5 : 1.2;
    }

    /** A device around others. */
    static Device outer(String id, Random random) {
        return new RandomDevice(random).device(id, OUTER);
    }

    /** A device inside others. */
    static Device inner(String id, Random random) {
        return new RandomDevice(random).device(id, INNER);
    }

    private Device device(String id, List<DeviceKind> kinds) {
        DeviceKind kind = pick(kinds);
        boolean isOuter = kinds == OUTER;
        List<ShaftSection> shaft = isOuter ? List.of() : shaft(kind);
        Optional<Dimension> length = oneIn(8) ? Optional.empty()
                : Optional.of(Dimension.lenient(oneIn(15) ? "long" : length(random.nextInt(30))));
        return new Device(id, id, kind, pick(SIZES), length, oneIn(3) ? printed(0.2, 0.5) : Optional.empty(), shaft,
                lumens(isOuter), oneIn(3), new RandomClaims(random).claims());
    }

    private List<Lumen> lumens(boolean isOuter) {
        List<Lumen> lumens = new ArrayList<>();
        if (isOuter) {
            lumens.add(lumen("lumen", Lumen.Use.WORKING));
        }
        if (oneIn(2)) {
            lumens.add(lumen("wire", Lumen.Use.WIRE));
        }
        return lumens;
    }

    private Lumen lumen(String name, Lumen.Use use) {
        int distal = oneIn(4) ? random.nextInt(4) : 0;
        int length = oneIn(12) ? 0 : 1 + random.nextInt(20);
        List<LumenSection> sections = new ArrayList<>();
        int station = 0;
        for (int i = oneIn(8) ? 0 : 1 + random.nextInt(mostSections); i > 0; i--) {
            int from = oneIn(12) ? random.nextInt(20) : station;
            station = from + (oneIn(10) ? 0 : 1 + random.nextInt(oneIn(2) ? 20 : 4));
            Optional<Dimension> proximal = printed(narrowest, 2);
            sections.add(new LumenSection(name(), at(from), at(station), proximal,
                    oneIn(3) ? printed(narrowest, 2) : proximal, SourceRef.NONE));
        }
        int end = oneIn(3) ? distal + length : distal + Math.max(length > 0 ? 1 : 0, station);
        return new Lumen(name, use, pick(List.of(Lumen.Opening.values())), at(distal), at(end), sections);
    }

    private List<ShaftSection> shaft(DeviceKind kind) {
        List<ShaftSection> sections = new ArrayList<>();
        int station = 0;
        for (int i = random.nextInt(mostSections + 1); i > 0; i--) {
            int from = oneIn(8) ? random.nextInt(20) : station;
            station = from + (oneIn(10) ? 0 : 1 + random.nextInt(8));
            Contour distal = contour(kind);
            Contour proximal = oneIn(3) ? contour(kind) : distal;
            AfterUse use = pick(List.of(AfterUse.UNCHANGED, AfterUse.UNCHANGED, AfterUse.GROWS, AfterUse.STATED));
            boolean stated = use == AfterUse.STATED;
            sections.add(new ShaftSection(name(), at(from), at(station), distal, proximal,
                    stated ? contour(kind) : distal, stated ? contour(kind) : proximal, use, oneIn(3), false,
                    SourceRef.NONE));
        }
        return sections;
    }

    private Contour contour(DeviceKind kind) {
        if (kind != DeviceKind.GUIDEWIRE && oneIn(12)) {
            return new Contour.Oval(sure(0.6, 1.2), sure(0.3, 0.6));
        }
        if (kind != DeviceKind.GUIDEWIRE && oneIn(12)) {
            return new Contour.Bundle(List.of(new Contour.Member(Length.ZERO, Length.ZERO, sure(0.3, 0.6)),
                    new Contour.Member(Length.ofMm(0.5), Length.ZERO, sure(0.3, 0.6))));
        }
        return new Contour.Round(oneIn(5) ? printed(0.3, 1.8) : printed(0.3, 1.2));
    }

    private Dimension sure(double least, double most) {
        return Dimension.lenient(diameter(least, most));
    }

    private Optional<Dimension> printed(double least, double most) {
        if (oneIn(missingInOf)) {
            return oneIn(2) ? Optional.empty() : Optional.of(Dimension.lenient("as usual"));
        }
        return Optional.of(sure(least, most));
    }

    /** One of the few diameters in a range, printed in one of several forms. */
    private String diameter(double least, double most) {
        int hundredths = (int) (least * 20 + random.nextInt((int) ((most - least) * 20) + 1)) * 5;
        String mm = hundredths / 100 + "." + hundredths / 10 % 10 + hundredths % 10;
        return switch (random.nextInt(8)) {
            case 0 -> mm + " mm max";
            case 1 -> mm + " mm min";
            case 2 -> mm + " mm \u00b10.05";
            case 3 -> mm + ".." + mm + "5 mm";
            default -> mm + " mm";
        };
    }

    private String name() {
        return "part " + random.nextInt(mostSections + 1);
    }

    private static Length at(int steps) {
        return STEP.times(steps);
    }

    private static String length(int steps) {
        return at(steps).toString();
    }

    private boolean oneIn(int number) {
        return random.nextInt(number) == 0;
    }

    private <T> T pick(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
