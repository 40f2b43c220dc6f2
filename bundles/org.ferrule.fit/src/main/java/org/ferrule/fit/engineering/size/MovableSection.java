/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.engineering.change.DeviceChange;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.change.Reprint;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * A section whose diameter is moved. Its spread moves along: a stated tolerance, the width of a range and a standard
 * deviation stay as they are round the moved figure, a minimum or maximum moves its end, and where the label states no
 * spread the rule set's span applies to the moved figure as to any other. Both ends of a taper move by as much. A
 * figure that is missing or cannot be read counts as one that is stated without a tolerance.
 */
public final class MovableSection {
    private static final Dimension NOTHING = Reprint.movedBy(Dimension.parse("0 mm"), Length.ZERO);

    private final Place place;
    private final Dimension distal;
    private final Dimension proximal;

    private MovableSection(Place place, Optional<Dimension> distal, Optional<Dimension> proximal) {
        this.place = place;
        this.distal = readable(distal);
        this.proximal = readable(proximal);
    }

    private static Dimension readable(Optional<Dimension> printed) {
        return printed.filter(Dimension::readable).orElse(NOTHING);
    }

    /**
     * A section of a shaft.
     *
     * @throws IllegalArgumentException naming device and section when it is not round
     */
    public static MovableSection of(Place.Shaft place) {
        ShaftSection section = place.section();
        return new MovableSection(place, diameter(place, section.distal()), diameter(place, section.proximal()));
    }

    private static Optional<Dimension> diameter(Place.Shaft place, Contour contour) {
        if (contour instanceof Contour.Round round) {
            return round.diameter();
        }
        throw new IllegalArgumentException("section \"" + place.name() + "\" of device \"" + place.device().id()
                + "\" is not round, so it has no single outer diameter to move");
    }

    /** A section of a lumen. */
    public static MovableSection of(Place.Bore place) {
        return new MovableSection(place, place.section().distal(), place.section().proximal());
    }

    /** Where it stands. */
    public Place place() {
        return place;
    }

    /** Whether it is a section of a lumen, which takes more the larger it is. */
    public boolean isBore() {
        return place instanceof Place.Bore;
    }

    /** The figures as printed. */
    public Size printed() {
        return sizeAt(Length.ZERO);
    }

    /** The figure at its distal end, with its spread. */
    Dimension distal() {
        return distal;
    }

    /** The figure at its proximal end, with its spread. */
    Dimension proximal() {
        return proximal;
    }

    /** The figures after a move. */
    public Size sizeAt(Length by) {
        return new Size(distal.label().plus(by), proximal.label().plus(by));
    }

    /** How far down it can be moved: a negative length, or zero. */
    public Length leastMove() {
        return Reprint.leastMove(distal).max(Reprint.leastMove(proximal));
    }

    /** The device with the section moved. */
    public Device movedBy(Length by) {
        if (place instanceof Place.Shaft shaft) {
            return DeviceChange.of(shaft, contour -> new Contour.Round(
                    Optional.of(Reprint.movedBy(readable(diameter(shaft, contour)), by))));
        }
        return DeviceChange.of((Place.Bore) place,
                printed -> Optional.of(Reprint.movedBy(readable(printed), by)));
    }
}
