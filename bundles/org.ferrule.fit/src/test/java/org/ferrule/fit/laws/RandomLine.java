/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Many sizes of one device, which differ in a diameter: whole blocks of them often have the same answer. */
final class RandomLine {
    private static final List<String> FORMS = List.of("", "", " max", " min");

    private final Random random;
    private final DeviceKind kind;
    private final int tip;
    private final int tipEnd;
    private final String form;
    private final boolean grows;
    private final boolean deploys;
    private final int length;
    private final Optional<Set<DeviceKind>> claimed;

    RandomLine(Random random) {
        this.random = random;
        this.kind = random.nextBoolean() ? DeviceKind.BALLOON_CATHETER : DeviceKind.STENT_SYSTEM;
        this.tip = 20 + random.nextInt(100);
        this.tipEnd = tip + random.nextInt(3) * 10;
        this.form = FORMS.get(random.nextInt(FORMS.size()));
        this.grows = random.nextBoolean();
        this.deploys = random.nextInt(4) == 0;
        this.length = 20 + random.nextInt(60);
        this.claimed = random.nextInt(3) == 0 ? Optional.empty()
                : Optional.of(random.nextBoolean() ? Set.of(DeviceKind.GUIDE_CATHETER) : Set.of());
    }

    /** So many sizes. */
    List<Device> devices(int number) {
        List<Device> devices = new ArrayList<>();
        int widest = 40 + random.nextInt(120);
        for (int i = 0; i < number; i++) {
            devices.add(device("s" + i, widest + random.nextInt(60)));
        }
        return devices;
    }

    private Device device(String id, int profile) {
        AfterUse use = grows ? AfterUse.GROWS : AfterUse.UNCHANGED;
        List<ShaftSection> sections = List.of(
                section("tip", 0, 3, round(tip), round(tipEnd), AfterUse.UNCHANGED),
                section("middle", 3, 9, round(profile), round(profile), use),
                section("shaft", 9, length, round(60), round(60), AfterUse.UNCHANGED));
        List<Claim> claims = claimed.map(kinds -> claim(kinds, profile)).map(List::of).orElse(List.of());
        return new Device(id, id, kind, "", Optional.of(Dimension.parse(at(length).toString())), Optional.empty(),
                sections, List.of(), deploys, claims);
    }

    private static Claim claim(Set<DeviceKind> kinds, int profile) {
        return new Claim(Claim.Type.MINIMUM_LUMEN, Optional.of(Dimension.parse(diameter(profile + 20))), kinds,
                List.of(),
                List.of(), Optional.empty(), false, Set.of(Phase.IN), SourceRef.NONE);
    }

    private static ShaftSection section(String name, int from, int to, Contour distal, Contour proximal,
            AfterUse use) {
        return new ShaftSection(name, at(from), at(to), distal, proximal, distal, proximal, use, false, false,
                SourceRef.NONE);
    }

    private Contour round(int hundredths) {
        return new Contour.Round(Optional.of(Dimension.parse(diameter(hundredths) + form)));
    }

    private static String diameter(int hundredths) {
        return hundredths / 100 + "." + hundredths / 10 % 10 + hundredths % 10 + " mm";
    }

    private static Length at(int steps) {
        return new Length(5_000_000L * steps);
    }
}
