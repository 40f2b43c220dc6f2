/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;
import org.ferrule.model.Lumen;
import org.ferrule.model.LumenUse;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.ui.devices.part.Shown;

/** Finds the figures by which devices are compared. */
final class Places {

    private static final Comparator<Place> BY_LENGTH = Comparator.comparing(place -> length(place).orElseThrow());

    private Places() {
    }

    /** The largest outer diameter of any section: the crossing profile of a balloon or a stent. */
    static Optional<Place> largestDiameter(Shown device) {
        return sections(device).flatMap(Places::diameters).filter(place -> length(place).isPresent()).max(BY_LENGTH)
                .or(() -> first(device, Literals.DEVICE_PARTS__SECTIONS, Literals.SHAFT_SECTION__OD));
    }

    /** The outer diameter at the distal tip. */
    static Optional<Place> entryProfile(Shown device) {
        return first(device, Literals.DEVICE_PARTS__SECTIONS, Literals.SHAFT_SECTION__OD);
    }

    /** The least inner diameter of the first working lumen. */
    static Optional<Place> mainLumen(Shown device) {
        Optional<Shown> lumen = device.parts(Literals.DEVICE_PARTS__LUMENS).stream()
                .filter(part -> ((Lumen) part.complete()).getUse() == LumenUse.WORKING).findFirst();
        return lumen.flatMap(Places::least)
                .or(() -> lumen.flatMap(l -> first(l, Literals.LUMEN__SECTIONS, Literals.LUMEN_SECTION__ID)));
    }

    private static Optional<Place> least(Shown lumen) {
        return lumen.parts(Literals.LUMEN__SECTIONS).stream()
                .flatMap(section -> Stream.of(new Place(section, Literals.LUMEN_SECTION__ID),
                        new Place(section, Literals.LUMEN_SECTION__ID_DISTAL)))
                .filter(place -> length(place).isPresent()).min(BY_LENGTH);
    }

    /** The nominal diameter of the balloon, else of the stent. */
    static Optional<Place> nominalDiameter(Shown device) {
        return first(device, Literals.DEVICE_PARTS__STENT, Literals.STENT__DIAMETER)
                .or(() -> first(device, Literals.DEVICE_PARTS__BALLOON, Literals.BALLOON__DIAMETER));
    }

    /** The nominal length of the balloon, else of the stent. */
    static Optional<Place> nominalLength(Shown device) {
        return first(device, Literals.DEVICE_PARTS__STENT, Literals.STENT__LENGTH)
                .or(() -> first(device, Literals.DEVICE_PARTS__BALLOON, Literals.BALLOON__LENGTH));
    }

    private static Stream<Shown> sections(Shown device) {
        return device.parts(Literals.DEVICE_PARTS__SECTIONS).stream();
    }

    private static Stream<Place> diameters(Shown section) {
        Stream<Place> round = Stream.of(new Place(section, Literals.SHAFT_SECTION__OD),
                new Place(section, Literals.SHAFT_SECTION__OD_PROXIMAL));
        Stream<Place> oval = section.parts(Literals.SHAFT_SECTION__OVAL).stream()
                .map(shape -> new Place(shape, Literals.OVAL__WIDTH));
        return Stream.concat(round, oval);
    }

    private static Optional<Place> first(Shown holder, EReference list, EAttribute feature) {
        List<Shown> parts = holder.parts(list);
        return parts.isEmpty() ? Optional.empty() : Optional.of(new Place(parts.get(0), feature));
    }

    /** Returns the length that is printed at a place; nothing if there is none that can be read. */
    static Optional<Length> length(Place place) {
        return place.value() instanceof Dimension dimension && dimension.readable() ? Optional.of(dimension.label())
                : Optional.empty();
    }
}
