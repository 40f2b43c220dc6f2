/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * The wire over which a device is advanced.
 *
 * @param diameter of the wire; absent when it is not known
 * @param label its size as printed, for claims; absent when it is not known
 * @param device the wire itself; absent when only a size is known
 */
public record OwnWire(Optional<Figure> diameter, Optional<Length> label, Optional<Device> device) {

    /** Nobody says which wire it is. */
    public static final OwnWire NOT_STATED = new OwnWire(Optional.empty(), Optional.empty(), Optional.empty());

    public OwnWire {
        Objects.requireNonNull(diameter, "diameter");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(device, "device");
    }

    /** The largest wire that a device is stated to take. */
    public static OwnWire statedFor(Device device, FigureReader reader) {
        return device.takesWire().filter(Dimension::readable).map(size -> new OwnWire(
                Optional.of(reader.read(size, FigureClass.WIRE_DIAMETER, DeviceKind.GUIDEWIRE).figure()),
                Optional.of(size.label()), Optional.empty())).orElse(NOT_STATED);
    }

    /** A wire of the library; its thickest section counts along its whole length, which errs on the safe side. */
    public static OwnWire ofDevice(Device wire, FigureReader reader) {
        Optional<Figure> thickest = Optional.empty();
        Optional<Length> label = Optional.empty();
        for (Contour contour : contours(wire)) {
            Optional<Dimension> printed = printed(contour);
            if (printed.isEmpty()) {
                return new OwnWire(Optional.empty(), Optional.empty(), Optional.of(wire));
            }
            Figure figure = reader.read(printed.get(), FigureClass.WIRE_DIAMETER, wire.kind()).figure();
            thickest = Optional.of(thickest.map(figure::max).orElse(figure));
            Length here = printed.get().label();
            label = Optional.of(label.map(here::max).orElse(here));
        }
        return new OwnWire(thickest, label, Optional.of(wire));
    }

    private static List<Contour> contours(Device wire) {
        return wire.sections().stream().flatMap(s -> Stream.of(s.distal(), s.proximal())).toList();
    }

    private static Optional<Dimension> printed(Contour contour) {
        return contour instanceof Contour.Round round ? round.diameter().filter(Dimension::readable)
                : Optional.empty();
    }
}
