/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;

import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * What lies across a stretch of a device, part by part: what is needed where others lie beside it.
 *
 * @param from station of its distal end, from the distal tip of the device
 * @param to station of its proximal end, from the distal tip of the device
 * @param distal the shaft at its distal end
 * @param proximal the shaft at its proximal end, of the same form
 * @param wire the wire that lies beside the shaft
 * @param proved whether the shaft is as it says, and not only no thicker
 */
public record Shape(Length from, Length to, Profile distal, Profile proximal, Optional<Figure> wire, boolean proved) {

    public Shape {
        if (distal.figures().equals(proximal.figures())) {
            proximal = distal;
        }
    }

    public boolean tapers() {
        return distal != proximal;
    }

    /** The shaft, then the wire beside it, at a station; what tapers is rounded up. */
    public List<Profile> at(Length station) {
        return withWire(shaftAt(station));
    }

    /** The shaft, each measure as large as it is anywhere between two stations, then the wire beside it. */
    List<Profile> widest(Length a, Length b) {
        return between(a, b, Figure::max);
    }

    /** The shaft, each measure as small as it is anywhere between two stations, then the wire beside it. */
    List<Profile> narrowest(Length a, Length b) {
        return between(a, b, Figure::min);
    }

    private List<Profile> between(Length a, Length b, BinaryOperator<Figure> choice) {
        return withWire(tapers() ? shaftAt(a).with(shaftAt(b), choice) : distal);
    }

    private List<Profile> withWire(Profile shaft) {
        return wire.map(w -> List.of(shaft, Profile.disc(w))).orElseGet(() -> List.of(shaft));
    }

    private Profile shaftAt(Length station) {
        if (!tapers() || station.compareTo(from) <= 0) {
            return distal;
        }
        Length part = station.minus(from);
        Length whole = to.minus(from);
        return part.compareTo(whole) >= 0 ? proximal
                : distal.with(proximal, (a, b) -> a.towards(b, part, whole, RoundingMode.CEILING));
    }
}
