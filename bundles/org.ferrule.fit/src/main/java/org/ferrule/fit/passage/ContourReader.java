/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.figure.ReadFigure;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.quantity.Dimension;

/** Reads the outline of one section under a rule set. */
final class ContourReader {
    private final Device device;
    private final FigureReader reader;

    ContourReader(Device device, FigureReader reader) {
        this.device = device;
        this.reader = reader;
    }

    /** The room that a section needs by itself, from its distal to its proximal end. */
    Stretch read(ShaftSection section, Contour distal, Contour proximal) {
        return read(section, distal, proximal, Optional.empty());
    }

    /** The room that a section needs with a wire beside it. */
    Stretch readBeside(ShaftSection section, Contour distal, Contour proximal, OwnWire wire) {
        return read(section, distal, proximal, wire.diameter());
    }
}
