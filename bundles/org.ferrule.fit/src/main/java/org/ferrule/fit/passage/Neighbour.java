/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.RoundingMode;
import java.util.Objects;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * A stretch of a device that lies still in a lumen while another device passes.
 *
 * @param device that it belongs to
 * @param part what it is
 * @param outline the stretch, in stations from the tip of {@code device}
 * @param tipAt where that tip lies, from the proximal entry of the way; may lie beyond its end
 */
public record Neighbour(Device device, SharedSection.Part part, Stretch outline, Length tipAt) {

    public Neighbour {
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(tipAt, "tipAt");
    }

    /** The station of the device that lies at a station of the way. */
    public Length stationAt(Length x) {
        return tipAt.minus(x);
    }

    /** The room that it needs by itself at a station of the way where its figures are known. */
    public Figure figureAt(Length x) {
        return outline.at(stationAt(x).max(outline.from()).min(outline.to()), RoundingMode.CEILING);
    }

    /** Whether nobody knows how thick it is. */
    boolean isUnknown() {
        return outline.shape().isEmpty();
    }

    /** Its proximal end, from the proximal entry of the way. */
    Length nearerEnd() {
        return tipAt.minus(outline.to());
    }

    /** Its distal end, from the proximal entry of the way. */
    Length fartherEnd() {
        return tipAt.minus(outline.from());
    }

    /** Whether it lies all along a window of the way in which no end of it lies, or somewhere in it without a length. */
    boolean liesIn(Length from, Length to) {
        boolean pointLike = nearerEnd().equals(fartherEnd()) || from.equals(to);
        int before = nearerEnd().compareTo(to);
        int behind = fartherEnd().compareTo(from);
        return pointLike ? before <= 0 && behind >= 0 : before < 0 && behind > 0;
    }
}
