/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * Invented devices as the demo has them, in any number: guides, extensions and microcatheters around; balloons on a wire
 * that lies beside their shafts, stents, tapered wires, microcatheters and burrs inside. Figures are printed as minimum,
 * nominal or maximum, some are missing; most devices have a claim or two, some pairs were tried on a bench.
 */
final class UsualDevices {
    private static final String[] FRENCH = { "5 Fr", "6 Fr", "7 Fr", "8 Fr" };

    private final Random random;
    private final boolean areDifferent;

    /**
     * A source of devices.
     *
     * @param areDifferent whether every diameter is its own, so that no two devices are alike; else sizes are those few
     *                     that catalogues print
     */
    UsualDevices(long seed, boolean areDifferent) {
        this.random = new Random(seed);
        this.areDifferent = areDifferent;
    }

    /** So many devices with a lumen. */
    List<Device> outer(int count) {
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            devices.add(switch (i % 8) {
                case 5 -> extension("o" + i);
                case 6 -> microcatheter("o" + i);
                case 7 -> sheath("o" + i);
                default -> guide("o" + i);
            });
        }
        return devices;
    }

    /** So many devices to go into a lumen. */
    List<Device> inner(int count) {
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            devices.add(switch (i % 10) {
                case 5, 6 -> stent("i" + i);
                case 7 -> wire("i" + i);
                case 8 -> microcatheter("i" + i);
                case 9 -> burr("i" + i);
                default -> balloon("i" + i);
            });
        }
        return devices;
    }

    /** Some pairs tried on a bench. */
    List<BenchResult> bench(int count, int outer, int inner) {
        List<BenchResult> results = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            results.add(new BenchResult("o" + random.nextInt(outer), "", "i" + random.nextInt(inner),
                    Optional.empty(), random.nextInt(3) > 0, Set.of(Phase.IN), 3, SourceRef.NONE));
        }
        return results;
    }

    private Device guide(String id) {
        int size = random.nextInt(FRENCH.length);
        List<Claim> claims = random.nextInt(3) == 0
                ? List.of(claim(Claim.Type.LARGEST_DEVICE, inches(0.045 + 0.012 * size), DeviceKind.STENT_SYSTEM,
                        List.of()))
                : List.of();
        return around(id, DeviceKind.GUIDE_CATHETER, FRENCH[size],
                lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, 1000,
                        inches(0.054 + 0.012 * size + 0.001 * random.nextInt(6))
                                + (random.nextBoolean() ? " min" : "")),
                1000, claims);
    }

    private Device sheath(String id) {
        return around(id, DeviceKind.INTRODUCER_SHEATH, FRENCH[random.nextInt(FRENCH.length)],
                lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, 110, mm(1.9 + 0.05 * random.nextInt(20))), 110,
                List.of());
    }

    private Device extension(String id) {
        return around(id, DeviceKind.GUIDE_EXTENSION, FRENCH[random.nextInt(FRENCH.length)],
                lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, 250,
                        inches(0.051 + 0.001 * random.nextInt(20))),
                1500, List.of());
    }

    private Device microcatheter(String id) {
        double tip = 0.5 + 0.02 * random.nextInt(10);
        double shaft = tip + 0.1 + 0.02 * random.nextInt(15);
        String narrow = inches(0.0155 + 0.001 * random.nextInt(3));
        Lumen wire = random.nextBoolean() ? lumen("wire", Lumen.Use.WIRE, Lumen.Opening.HUB, 1350, narrow)
                : taperedLumen("wire", 1350, inches(0.021 + 0.001 * random.nextInt(4)), narrow);
        return device(id, DeviceKind.MICROCATHETER, "", 1350, "0.014 in",
                List.of(taper("tip", 0, 30, mm(tip), mm(shaft)), plain("shaft", 30, 1350, printed(shaft))),
                List.of(wire), false, List.of(minimumLumen(shaft)));
    }

    private Device balloon(String id) {
        double profile = 0.75 + 0.02 * random.nextInt(30);
        int length = 10 + random.nextInt(30);
        List<ShaftSection> sections = List.of(plain("tip", 0, 4, "0.017 in"),
                folded("balloon", 4, 4 + length, mm(profile)), plain("distal shaft", 4 + length, 250, "2.6 Fr"),
                plain("exit port", 250, 260, "2.7 Fr"), plain("hypotube", 260, 1420, printed(0.63)));
        return device(id, DeviceKind.BALLOON_CATHETER, "", 1420, "0.014 in", sections, List.of(sidePort()), false,
                List.of(minimumLumen(profile + 0.3)));
    }

    private Device stent(String id) {
        double profile = 0.95 + 0.01 * random.nextInt(25);
        List<ShaftSection> sections = List.of(folded("stent", 0, 24, mm(profile) + " max"),
                plain("distal shaft", 24, 260, mm(0.9)), plain("hypotube", 260, 1400, printed(0.7)));
        List<Claim> claims = random.nextBoolean() ? List.of(minimumLumen(profile + 0.35))
                : List.of(minimumLumen(profile + 0.35),
                        claim(Claim.Type.NOT_COMPATIBLE, "", DeviceKind.GUIDE_EXTENSION, List.of("5 Fr")));
        return device(id, DeviceKind.STENT_SYSTEM, "", 1400, "0.014 in", sections, List.of(sidePort()), true, claims);
    }

    private Device wire(String id) {
        String core = inches(random.nextInt(4) == 0 ? 0.018 : 0.014);
        return device(id, DeviceKind.GUIDEWIRE, core, 1900, "",
                List.of(taper("tip", 0, 20, "0.009 in", core), plain("shaft", 20, 1900, core)), List.of(), false,
                List.of());
    }

    private Device burr(String id) {
        double diameter = 1.25 + 0.25 * random.nextInt(4);
        return device(id, DeviceKind.ROTATIONAL_BURR, "", 1350, "0.009 in",
                List.of(taper("nose", 0, 5, mm(0.6), mm(diameter)), plain("burr", 5, 10, mm(diameter)),
                        plain("sheath", 10, 1350, mm(1.43) + " max")),
                List.of(), false, List.of(minimumLumen(diameter + 0.1)));
    }

    private Device around(String id, DeviceKind kind, String size, Lumen lumen, int length, List<Claim> claims) {
        return new Device(id, id, kind, size, Optional.of(Dimension.parse(length + " mm")), Optional.empty(),
                List.of(), List.of(lumen), false, claims);
    }

    private Device device(String id, DeviceKind kind, String size, int length, String wire,
            List<ShaftSection> sections, List<Lumen> lumens, boolean deploys, List<Claim> claims) {
        Optional<Dimension> effective = random.nextInt(30) == 0 ? Optional.empty()
                : Optional.of(Dimension.parse(length + " mm"));
        return new Device(id, id, kind, size, effective, wire.isEmpty() ? Optional.empty()
                : Optional.of(Dimension.parse(wire)), sections, lumens, deploys, claims);
    }

    private static Lumen sidePort() {
        return lumen("wire", Lumen.Use.WIRE, Lumen.Opening.SIDE_PORT, 260, "0.0155 in");
    }

    private static Lumen lumen(String name, Lumen.Use use, Lumen.Opening opening, int length, String diameter) {
        Optional<Dimension> printed = Optional.of(Dimension.parse(diameter));
        return new Lumen(name, use, opening, Length.ZERO, at(length),
                List.of(new LumenSection(name, Length.ZERO, at(length), printed, printed, SourceRef.NONE)));
    }

    private Lumen taperedLumen(String name, int length, String wide, String narrow) {
        Optional<Dimension> proximal = Optional.of(Dimension.parse(wide));
        return new Lumen(name, Lumen.Use.WIRE, Lumen.Opening.HUB, Length.ZERO, at(length), List.of(
                new LumenSection("body", Length.ZERO, at(length - 200), proximal, proximal, SourceRef.NONE),
                new LumenSection("taper", at(length - 200), at(length), proximal,
                        Optional.of(Dimension.parse(narrow)), SourceRef.NONE)));
    }

    private Claim minimumLumen(double mm) {
        return claim(Claim.Type.MINIMUM_LUMEN, inches(mm / 25.4), DeviceKind.GUIDE_CATHETER, List.of());
    }

    private static Claim claim(Claim.Type type, String value, DeviceKind partner, List<String> sizes) {
        return new Claim(type, value.isEmpty() ? Optional.empty() : Optional.of(Dimension.parse(value)),
                Set.of(partner), sizes, List.of(), Optional.empty(), false, Set.of(Phase.IN), SourceRef.NONE);
    }

    private static ShaftSection plain(String name, int from, int to, String diameter) {
        return ShaftSection.plain(name, at(from), at(to), round(diameter));
    }

    private static ShaftSection taper(String name, int from, int to, String distal, String proximal) {
        return new ShaftSection(name, at(from), at(to), round(distal), round(proximal), round(distal),
                round(proximal), AfterUse.UNCHANGED, false, false, SourceRef.NONE);
    }

    private static ShaftSection folded(String name, int from, int to, String diameter) {
        return new ShaftSection(name, at(from), at(to), round(diameter), round(diameter), round(diameter),
                round(diameter), AfterUse.GROWS, true, false, SourceRef.NONE);
    }

    private static Contour round(String diameter) {
        return new Contour.Round(diameter.equals("?") ? Optional.empty() : Optional.of(Dimension.parse(diameter)));
    }

    /** A figure as it may be printed: nominal, as a maximum, with its tolerance, or not at all. */
    private String printed(double diameter) {
        return switch (random.nextInt(20)) {
            case 0 -> "?";
            case 1, 2, 3, 4 -> mm(diameter) + " max";
            case 5, 6 -> mm(diameter) + " \u00b10.02";
            default -> mm(diameter);
        };
    }

    private static Length at(int mm) {
        return Length.of(Integer.toString(mm), LengthUnit.MILLIMETRE);
    }

    private String mm(double value) {
        return areDifferent ? String.format(Locale.ROOT, "%.5f mm", varied(value))
                : String.format(Locale.ROOT, "%.2f mm", value);
    }

    private String inches(double value) {
        return areDifferent ? String.format(Locale.ROOT, "%.5f in", varied(value))
                : String.format(Locale.ROOT, "%.4f in", value);
    }

    private double varied(double value) {
        return value * (0.99 + 0.02 * random.nextDouble());
    }
}
