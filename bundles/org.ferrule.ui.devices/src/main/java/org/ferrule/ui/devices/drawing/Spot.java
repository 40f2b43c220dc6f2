/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a handle lies. Stations count from the tip.
 *
 * @param lumen the lumen that it belongs to; empty for the shaft
 * @param fromMm the station where what it moves begins
 * @param toMm the station where what it moves ends; the same for a border or an opening
 * @param share how far it lies on the way between the two, 0 to 1
 * @param acrossMm the diameter on whose lower side a station lies; 0 for the middle
 * @param entryMm the station from which the figure counts, towards the tip; nothing if it counts from the tip
 * @param disc the disc that it belongs to; nothing where it belongs to all that lies there
 */
record Spot(String lumen, double fromMm, double toMm, double share, double acrossMm, OptionalDouble entryMm,
        Optional<DiscSpot> disc) {

    /** A diameter of a stretch. */
    static Spot along(String lumen, double fromMm, double toMm, double share) {
        return new Spot(lumen, fromMm, toMm, share, 0, OptionalDouble.empty(), Optional.empty());
    }

    /** A station of the shaft. */
    static Spot at(double stationMm) {
        return inLumen("", stationMm, 0);
    }

    /** A station of a lumen that counts from the tip. */
    static Spot inLumen(String lumen, double stationMm, double acrossMm) {
        return new Spot(lumen, stationMm, stationMm, 0, acrossMm, OptionalDouble.empty(), Optional.empty());
    }

    /** A station of a lumen that counts from its entry. */
    static Spot fromEntry(String lumen, double entryMm, double figureMm, double acrossMm) {
        double station = entryMm - figureMm;
        return new Spot(lumen, station, station, 0, acrossMm, OptionalDouble.of(entryMm), Optional.empty());
    }

    /** The same place along a section, for a disc. */
    Spot ofDisc(DiscSpot wanted) {
        return new Spot(lumen, fromMm, toMm, share, acrossMm, entryMm, Optional.of(wanted));
    }

    /** Whether the figure tells where something lies across the shaft. */
    boolean isOffset() {
        return disc.filter(DiscSpot::moves).isPresent();
    }

    boolean isStation() {
        return fromMm == toMm;
    }

    /** Whether the figure grows towards the tip. */
    boolean growsDistally() {
        return entryMm.isPresent();
    }

    /** From the station to the figure that tells it, or the other way. */
    double converted(double mm) {
        return entryMm.isPresent() ? entryMm.getAsDouble() - mm : mm;
    }
}
