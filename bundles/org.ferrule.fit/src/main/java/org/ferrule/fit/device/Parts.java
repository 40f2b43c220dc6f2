/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Pressure;

/**
 * The parts that give a device its abilities, as its papers describe them.
 *
 * @param balloon absent when it has none
 * @param stent absent when it carries none
 * @param cutter absent when it has none
 * @param imagingPlane station of the imaging plane from the distal tip; absent when it images nothing or nobody says
 * @param markers radiopaque markers
 * @param extendable whether an extension can be attached to it, of a wire; absent when nobody says
 */
public record Parts(Optional<BalloonPart> balloon, Optional<StentPart> stent, Optional<CutterPart> cutter,
        Optional<Length> imagingPlane, List<MarkerPart> markers, Optional<Boolean> extendable) {

    /** No parts that matter. */
    public static final Parts NONE = new Parts(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            List.of(), Optional.empty());

    public Parts {
        Objects.requireNonNull(balloon, "balloon");
        Objects.requireNonNull(stent, "stent");
        Objects.requireNonNull(cutter, "cutter");
        Objects.requireNonNull(imagingPlane, "imagingPlane");
        markers = List.copyOf(markers);
        Objects.requireNonNull(extendable, "extendable");
    }

    /**
     * A balloon.
     *
     * @param section name of the shaft section that is the folded balloon; empty when not named
     * @param nominalDiameter at nominal pressure
     * @param nominalLength of its working part
     * @param nominalPressure at which it has its nominal diameter
     * @param ratedBurstPressure never to be exceeded
     * @param compliance the compliance table as printed, in rising pressure
     */
    public record BalloonPart(String section, Optional<Dimension> nominalDiameter, Optional<Dimension> nominalLength,
            Optional<Pressure> nominalPressure, Optional<Pressure> ratedBurstPressure, List<ComplianceRow> compliance) {
        public BalloonPart {
            Objects.requireNonNull(section, "section");
            compliance = List.copyOf(compliance);
        }
    }

    /** One row of a compliance table. */
    public record ComplianceRow(Pressure pressure, Dimension diameter) {
    }

    /**
     * A stent.
     *
     * @param section name of the shaft section where it is crimped; empty when not named
     * @param nominalDiameter expanded
     * @param nominalLength expanded
     * @param largestDiameter that the maker allows after dilatation
     */
    public record StentPart(String section, Optional<Dimension> nominalDiameter, Optional<Dimension> nominalLength,
            Optional<Dimension> largestDiameter) {
    }

    /**
     * A part that removes or cuts plaque.
     *
     * @param section name of the shaft section where it sits; empty when not named
     * @param diameter of the cutter
     */
    public record CutterPart(String section, Optional<Dimension> diameter) {
    }

    /**
     * A radiopaque marker.
     *
     * @param station of its distal edge from the distal tip
     * @param length along the shaft; absent when nobody states it
     */
    public record MarkerPart(Length station, Optional<Length> length) {
    }
}
