/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.sensitivity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Everything in the papers of devices that a verdict may rest on. */
final class Places {
    private Places() {
    }

    static List<Place> of(Collection<ReadDevice> devices) {
        Set<Place> places = new LinkedHashSet<>();
        devices.stream().map(ReadDevice::device).distinct().forEach(device -> places.addAll(of(device)));
        return List.copyOf(places);
    }

    private static List<Place> of(Device device) {
        List<Place> places = new ArrayList<>(ofSections(device));
        if (device.takesWire().isPresent()) {
            places.add(new Place.Wire(device));
            places.add(new Place.Statement(device, Optional.empty()));
        }
        device.claims().forEach(claim -> places.add(new Place.Statement(device, Optional.of(claim))));
        return places;
    }

    /** The sections of its shaft and of its lumens. */
    static List<Place> ofSections(Device device) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < device.sections().size(); i++) {
            places.add(new Place.Shaft(device, i));
        }
        for (Lumen lumen : device.lumens()) {
            for (int i = 0; i < lumen.sections().size(); i++) {
                places.add(new Place.Bore(device, lumen, i));
            }
        }
        return places;
    }

    /** The thickest section of a wire, which counts along its whole length where it lies beside a shaft. */
    static Optional<Place> thickest(Device wire) {
        return IntStream.range(0, wire.sections().size()).mapToObj(i -> (Place) new Place.Shaft(wire, i))
                .max(Comparator.comparing(p -> p.printed().stream().filter(Dimension::readable).map(Dimension::label)
                        .max(Length::compareTo).orElse(Length.ZERO)));
    }
}
