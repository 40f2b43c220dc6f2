/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.mechanics.StiffnessStep;
import org.ferrule.quantity.Length;

/**
 * Two sections next to each other of which one is more than three times as stiff as the other: a place to look at
 * (common practice), no more.
 *
 * @param at from the distal tip
 * @param distal name of the distal section
 * @param proximal name of the proximal section
 * @param factor how many times stiffer the stiffer one is
 */
public record StiffnessJump(Length at, String distal, String proximal, double factor) {

    /** The jumps of a device, of those sections of which the stiffness is stated. */
    static List<StiffnessJump> of(Device device) {
        List<ShaftSection> sections = device.sections().stream().sorted(Comparator.comparing(ShaftSection::from))
                .toList();
        List<StiffnessJump> jumps = new ArrayList<>();
        for (int i = 1; i < sections.size(); i++) {
            ShaftSection distal = sections.get(i - 1);
            ShaftSection proximal = sections.get(i);
            boolean meet = distal.to().equals(proximal.from());
            if (meet && distal.stiffness().isPresent() && proximal.stiffness().isPresent()) {
                addIfLarge(distal, proximal, jumps);
            }
        }
        return jumps;
    }

    private static void addIfLarge(ShaftSection distal, ShaftSection proximal, List<StiffnessJump> jumps) {
        double factor = StiffnessStep.ratio(newtonMm2(distal), newtonMm2(proximal));
        if (factor > StiffnessStep.FACTOR) {
            jumps.add(new StiffnessJump(proximal.from(), distal.name(), proximal.name(), factor));
        }
    }

    private static double newtonMm2(ShaftSection section) {
        return section.stiffness().orElseThrow().newtonMm2().doubleValue();
    }
}
