/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;

/**
 * A device of a stack as it is drawn: stations from the tip of the outermost device, distal positive, in mm.
 *
 * @param read the device
 * @param shaft its outline from the tip
 * @param lumen that holds the next level; absent where it has none
 * @param level its number, outermost first
 * @param tipMm where its tip lies
 * @param offsetMm how far its axis lies below that of the stack
 * @param rodOffsetMm the same of what lies proximal to a collar
 */
record NestedBody(ReadDevice read, List<Stretch> shaft, Optional<Lumen> lumen, int level, double tipMm,
        double offsetMm, double rodOffsetMm) {
    NestedBody {
        Objects.requireNonNull(read, "read");
        Objects.requireNonNull(lumen, "lumen");
        shaft = List.copyOf(shaft);
    }

    Device device() {
        return read.device();
    }

    /** Where its collar lies, if it has one. */
    Optional<Double> collarMm() {
        return lumen.filter(l -> l.opening() == Lumen.Opening.COLLAR).map(l -> tipMm - l.proximalAt().mm());
    }

    /** The largest diameter of it; some diameter where none is known. */
    double thicknessMm() {
        return shaft.stream().flatMap(s -> s.diameter().stream()).mapToDouble(t -> t.largest().centre().mm()).max()
                .orElse(1);
    }
}
