/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Lumen;
import org.ferrule.model.LumenSection;
import org.ferrule.model.LumenUse;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.ui.devices.part.Shown;

/** Finds the figures by which devices are compared. A table does so for thousands of them: without streams. */
final class Places {

    private static final Comparator<Length> LARGEST = Comparator.naturalOrder();
    private static final Comparator<Length> LEAST = Comparator.reverseOrder();

    private Places() {
    }

    /** The largest outer diameter of any section: the crossing profile of a balloon or a stent. */
    static Optional<Place> largestDiameter(Shown device) {
        List<Place> places = new ArrayList<>();
        for (ShaftSection section : complete(device).getSections()) {
            places.add(new Place(device, section, Literals.SHAFT_SECTION__OD));
            places.add(new Place(device, section, Literals.SHAFT_SECTION__OD_PROXIMAL));
            if (section.getOval() != null) {
                places.add(new Place(device, section.getOval(), Literals.OVAL__WIDTH));
            }
        }
        return utmost(places, LARGEST);
    }

    /** The outer diameter at the distal tip. */
    static Optional<Place> entryProfile(Shown device) {
        List<ShaftSection> sections = complete(device).getSections();
        return place(device, sections.isEmpty() ? null : sections.get(0), Literals.SHAFT_SECTION__OD);
    }

    /** The least inner diameter of the first working lumen. */
    static Optional<Place> mainLumen(Shown device) {
        List<Place> places = new ArrayList<>();
        workingLumen(device).ifPresent(lumen -> {
            for (LumenSection section : lumen.getSections()) {
                places.add(new Place(device, section, Literals.LUMEN_SECTION__ID));
                places.add(new Place(device, section, Literals.LUMEN_SECTION__ID_DISTAL));
            }
        });
        return utmost(places, LEAST);
    }

    private static Optional<Lumen> workingLumen(Shown device) {
        return complete(device).getLumens().stream().filter(lumen -> lumen.getUse() == LumenUse.WORKING).findFirst();
    }

    /** The nominal diameter of the balloon, else of the stent. */
    static Optional<Place> nominalDiameter(Shown device) {
        return place(device, complete(device).getStent(), Literals.STENT__DIAMETER)
                .or(() -> place(device, complete(device).getBalloon(), Literals.BALLOON__DIAMETER));
    }

    /** The nominal length of the balloon, else of the stent. */
    static Optional<Place> nominalLength(Shown device) {
        return place(device, complete(device).getStent(), Literals.STENT__LENGTH)
                .or(() -> place(device, complete(device).getBalloon(), Literals.BALLOON__LENGTH));
    }

    private static DeviceParts complete(Shown device) {
        return (DeviceParts) device.complete();
    }

    private static Optional<Place> place(Shown device, EObject part, EAttribute feature) {
        return part == null ? Optional.empty() : Optional.of(new Place(device, part, feature));
    }

    /** The place with the utmost length, else the first: a length could be stated there. */
    private static Optional<Place> utmost(List<Place> places, Comparator<Length> order) {
        Place utmost = null;
        for (Place place : places) {
            Optional<Length> length = length(place);
            if (length.isPresent()
                    && (utmost == null || order.compare(length.get(), length(utmost).orElseThrow()) > 0)) {
                utmost = place;
            }
        }
        return utmost == null ? places.stream().findFirst() : Optional.of(utmost);
    }

    /** Returns the length that is printed at a place; nothing if there is none that can be read. */
    static Optional<Length> length(Place place) {
        return place.value() instanceof Dimension dimension && dimension.readable() ? Optional.of(dimension.label())
                : Optional.empty();
    }
}
