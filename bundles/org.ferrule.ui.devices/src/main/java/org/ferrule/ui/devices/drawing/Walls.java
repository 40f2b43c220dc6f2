/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * What a wall needs: a shaft that is thicker than its lumens. Printed figures are compared, and of tapers the ends that
 * leave the most room, as where documents are checked, so that only what is certainly wrong is refused. Stations count
 * from the tip.
 */
final class Walls {

    private final Device device;

    Walls(Device device) {
        this.device = device;
    }

    /** The widest lumen between two stations; zero where there is none, or none that is known. */
    Length lumenBetween(Length from, Length to) {
        return device.lumens().stream().flatMap(lumen -> lumen.sections().stream()
                .filter(section -> overlaps(station(lumen, section.to()), station(lumen, section.from()), from, to)))
                .flatMap(section -> narrowest(section).stream()).max(Comparator.naturalOrder()).orElse(Length.ZERO);
    }

    private static Length station(Lumen lumen, Length fromEntry) {
        return lumen.proximalAt().minus(fromEntry);
    }

    private static Optional<Length> narrowest(LumenSection section) {
        return known(section.proximal(), section.distal()).min(Comparator.naturalOrder());
    }

    /** The thinnest part of the shaft between two stations; nothing where none is known. */
    Optional<Length> shaftBetween(Length from, Length to) {
        return device.sections().stream().filter(section -> overlaps(section.from(), section.to(), from, to))
                .flatMap(section -> room(section).stream()).min(Comparator.naturalOrder());
    }

    /** What a composed section has room for is not a figure that can be compared. */
    private static Optional<Length> room(ShaftSection section) {
        if (section.distal() instanceof Contour.Oval oval) {
            return known(Optional.of(oval.width()), Optional.of(oval.height())).min(Comparator.naturalOrder());
        }
        return known(diameter(section.distal()), diameter(section.proximal())).max(Comparator.naturalOrder());
    }

    private static Optional<Dimension> diameter(Contour contour) {
        return contour instanceof Contour.Round round ? round.diameter() : Optional.empty();
    }

    private static Stream<Length> known(Optional<Dimension> one, Optional<Dimension> other) {
        return Stream.of(one, other).flatMap(Optional::stream).filter(Dimension::readable).map(Dimension::label);
    }

    private static boolean overlaps(Length a, Length b, Length from, Length to) {
        return a.compareTo(to) < 0 && from.compareTo(b) < 0;
    }
}
