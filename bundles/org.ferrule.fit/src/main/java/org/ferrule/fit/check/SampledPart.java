/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Sample;

/**
 * A stretch of one diameter of which a standard deviation is stated.
 *
 * @param name of the section
 * @param from the nearer station
 * @param to the farther station
 * @param sample mean and standard deviation
 */
record SampledPart(String name, Length from, Length to, Sample sample) {

    /** Of a shaft, as far as no wire lies beside it, in stations from the tip. */
    static List<SampledPart> ofShaft(Device device, Phase phase) {
        Optional<Length> port = device.wireLumen().filter(Lumen::leavesShaft).map(Lumen::proximalAt);
        return device.sections().stream().filter(s -> port.isEmpty() || s.to().compareTo(port.get()) <= 0)
                .flatMap(s -> of(s, phase).stream()).toList();
    }

    /** Whether a standard deviation is stated of any part of a shaft; a quick look at most devices, which have none. */
    static boolean mayHave(Device device) {
        for (ShaftSection section : device.sections()) {
            if (hasSample(section.distal()) || hasSample(section.distalAfter())) {
                return true;
            }
        }
        return false;
    }

    private static boolean hasSample(Contour contour) {
        return contour instanceof Contour.Round round && round.diameter().flatMap(Dimension::sample).isPresent();
    }

    private static Optional<SampledPart> of(ShaftSection section, Phase phase) {
        boolean stated = phase == Phase.IN || section.afterUse() != ShaftSection.AfterUse.GROWS;
        if (!stated || !section.distal(phase).equals(section.proximal(phase))
                || !(section.distal(phase) instanceof Contour.Round round)) {
            return Optional.empty();
        }
        return round.diameter().flatMap(Dimension::sample)
                .map(sample -> new SampledPart(section.name(), section.from(), section.to(), sample));
    }

    /** Of a lumen, in stations from its proximal entry. */
    static List<SampledPart> ofLumen(Lumen lumen) {
        return lumen.sections().stream().filter(s -> s.proximal().equals(s.distal()))
                .flatMap(s -> of(s, lumen).stream()).toList();
    }

    private static Optional<SampledPart> of(LumenSection section, Lumen lumen) {
        return section.proximal().flatMap(Dimension::sample).map(sample -> new SampledPart(
                section.name().isEmpty() ? lumen.name() : section.name(), section.from(), section.to(), sample));
    }

    /** The same stretch farther on the way, called so there. */
    SampledPart movedBy(Length distance, String newName) {
        return new SampledPart(newName, from.plus(distance), to.plus(distance), sample);
    }

    boolean holds(String section, Length station) {
        return name.equals(section) && from.compareTo(station) <= 0 && station.compareTo(to) <= 0;
    }
}
