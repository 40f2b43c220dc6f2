/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** A device of a table of check values in the making. */
final class CheckDevice {
    private static final String NOT_KNOWN = "?";

    private final String id;
    private final DeviceKind kind;
    private final List<ShaftSection> sections = new ArrayList<>();
    private final List<Lumen> lumens = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private Optional<Dimension> length = Optional.empty();
    private Optional<Dimension> takesWire = Optional.empty();

    CheckDevice(String id, DeviceKind kind) {
        this.id = id;
        this.kind = kind;
    }

    CheckDevice length(String effectiveLength) {
        length = Optional.of(Dimension.parse(effectiveLength));
        return this;
    }

    CheckDevice section(String name, String from, String to, String diameter) {
        sections.add(ShaftSection.plain(name, station(from), station(to), new Contour.Round(printed(diameter))));
        return this;
    }

    CheckDevice lumen(String wholeLength, String diameter) {
        Length whole = station(wholeLength);
        LumenSection section = new LumenSection("lumen", Length.ZERO, whole, printed(diameter), printed(diameter),
                SourceRef.NONE);
        lumens.add(new Lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, Length.ZERO, whole, List.of(section)));
        return this;
    }

    /** Lets the device run over a wire that leaves it at that station. */
    CheckDevice wire(String diameter, String port) {
        takesWire = Optional.of(Dimension.parse(diameter));
        lumens.add(new Lumen("wire", Lumen.Use.WIRE, Lumen.Opening.SIDE_PORT, Length.ZERO, station(port),
                List.of()));
        return this;
    }

    CheckDevice claim(Claim claim) {
        claims.add(claim);
        return this;
    }

    private static Optional<Dimension> printed(String text) {
        return text.isEmpty() || text.equals(NOT_KNOWN) ? Optional.empty() : Optional.of(Dimension.parse(text));
    }

    private static Length station(String text) {
        return Dimension.parse(text).label();
    }

    Device device() {
        return new Device(id, id, kind, "", length, takesWire, sections, lumens, false, claims);
    }
}
