/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.drawing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The heights at which devices lie, in rows above (negative) and below the main wire. Upper walls are a row apart, so that
 * each has its label to the right of its tip, where nothing else lies; what lies beside the main wire lies below it.
 */
final class Rows {
    private static final double NARROW = 0.55;
    private static final double BESIDE = 0.75;

    private final Map<Part.Place, Double> upper = new EnumMap<>(Part.Place.class);
    private final Map<Part.Place, Double> lower = new EnumMap<>(Part.Place.class);
    private final Map<Part.Place, Double> labels = new EnumMap<>(Part.Place.class);
    private double deepest;

    /** Rows for devices, outermost first. */
    Rows(List<Part> parts) {
        double row = 0;
        double below = 0;
        for (int i = parts.size() - 1; i >= 0; i--) {
            Part.Place place = parts.get(i).place();
            if (place == Part.Place.MAIN_WIRE) {
                put(place, 0, 0);
            } else if (place == Part.Place.MICROCATHETER) {
                row--;
                below = NARROW;
                put(place, row, below);
            }
        }
        below = beside(parts, below);
        for (int i = parts.size() - 1; i >= 0; i--) {
            Part.Place place = parts.get(i).place();
            if (place.ordinal() < Part.Place.MICROCATHETER.ordinal()) {
                row--;
                below += place == Part.Place.VALVE ? 0 : NARROW;
                put(place, row, below);
            }
        }
        deepest = Math.max(below, labels.values().stream().mapToDouble(Double::doubleValue).max().orElse(0));
    }

    /** The second wire, and the anchor on it, whose label needs a row of its own. */
    private double beside(List<Part> parts, double below) {
        double at = below;
        for (Part part : parts) {
            if (part.place() == Part.Place.SECOND_WIRE) {
                at = below + BESIDE;
                put(part.place(), at, at);
            } else if (part.place() == Part.Place.ANCHOR) {
                double wire = at == below ? below + BESIDE : at;
                put(part.place(), wire, wire);
                labels.put(part.place(), wire + 1);
                at = wire;
            }
        }
        return at;
    }

    private void put(Part.Place place, double up, double down) {
        upper.put(place, up);
        lower.put(place, down);
        labels.put(place, up);
    }

    /** Where the upper wall of a device lies, or the device itself where it has no walls. */
    double upper(Part.Place place) {
        return upper.get(place);
    }

    /** Where its lower wall lies. */
    double lower(Part.Place place) {
        return lower.get(place);
    }

    /** Where its label lies. */
    double label(Part.Place place) {
        return labels.get(place);
    }

    /** How many rows there are above the main wire. */
    double above() {
        return -upper.values().stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    /** How many rows there are below the main wire. */
    double below() {
        return deepest;
    }
}
