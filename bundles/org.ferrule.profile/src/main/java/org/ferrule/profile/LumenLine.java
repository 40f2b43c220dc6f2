/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Taper;
import org.ferrule.profile.curve.Piece;
import org.ferrule.quantity.Length;

/**
 * A lumen of a guide, an extension or another device around, through which the devices of a comparison are to go.
 *
 * @param outer the device around
 * @param lumen of {@code outer}
 */
public record LumenLine(ReadDevice outer, Lumen lumen) {

    public LumenLine {
        Objects.requireNonNull(outer, "outer");
        Objects.requireNonNull(lumen, "lumen");
        if (!outer.device().lumens().contains(lumen)) {
            throw new IllegalArgumentException(
                    "device \"" + outer.device().id() + "\" has no such lumen \"" + lumen.name() + "\"");
        }
    }

    /** Its smallest inner diameter, end by end; absent when a part of it is unknown. */
    public Optional<Figure> narrowest() {
        boolean known = outer.bore(lumen).stream().allMatch(stretch -> stretch.diameter().isPresent());
        return known ? outer.bore(lumen).stream().map(Stretch::diameter).flatMap(Optional::stream)
                .map(Taper::smallest).reduce(Figure::min) : Optional.empty();
    }

    /** Whether the rule set gives an end, or the centre, that the label does not state, anywhere along it. */
    public boolean isAssumed() {
        return outer.bore(lumen).stream().map(stretch -> Piece.of(stretch, Length.ZERO)).anyMatch(Piece::isAssumed);
    }

    /** The name of the device, or its id where it has none. */
    public String name() {
        return outer.device().name().isEmpty() ? outer.device().id() : outer.device().name();
    }
}
