/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** The part of a device that lies proximal to one of its stations, as if it were a device. */
final class Proximal {
    private Proximal() {
    }

    /**
     * The shaft from a station on.
     *
     * @param withWire whether a wire that lies beside it counts
     */
    static ReadDevice of(ReadDevice whole, Length station, boolean withWire, RuleSet rules) {
        Device device = whole.device();
        List<ShaftSection> sections = device.sections().stream().filter(s -> s.to().compareTo(station) > 0)
                .flatMap(s -> section(s, station)).toList();
        List<Lumen> lumens = withWire ? device.lumens().stream().map(l -> lumen(l, station)).toList() : List.of();
        Optional<Dimension> length = device.statedLength().map(l -> l.minus(station).max(Length.ZERO))
                .map(l -> Dimension.of(l, LengthUnit.MILLIMETRE));
        return ReadDevice.over(new Device(device.id(), device.name(), device.kind(), device.size(), length,
                device.takesWire(), sections, lumens, device.deploys(), List.of()), rules, whole.wire());
    }

    /** A taper that is cut counts with both its ends all along, of which the larger is taken. */
    private static Stream<ShaftSection> section(ShaftSection s, Length station) {
        Length from = s.from().minus(station);
        Length to = s.to().minus(station);
        if (!from.isNegative()) {
            return Stream.of(between(s, from, to, s.distal(), s.distalAfter(), s.proximal(), s.proximalAfter()));
        }
        return Stream.of(
                between(s, Length.ZERO, to, s.distal(), s.distalAfter(), s.distal(), s.distalAfter()),
                between(s, Length.ZERO, to, s.proximal(), s.proximalAfter(), s.proximal(), s.proximalAfter()))
                .distinct();
    }

    private static ShaftSection between(ShaftSection s, Length from, Length to, Contour distal, Contour distalAfter,
            Contour proximal, Contour proximalAfter) {
        return new ShaftSection(s.name(), from, to, distal, proximal, distalAfter, proximalAfter, s.afterUse(),
                s.crossingProfile(), s.rigid(), s.source(), s.stiffness());
    }

    private static Lumen lumen(Lumen lumen, Length station) {
        return new Lumen(lumen.name(), lumen.use(), lumen.opening(),
                lumen.distalAt().minus(station).max(Length.ZERO), lumen.proximalAt().minus(station).max(Length.ZERO),
                lumen.proximalStated(), List.of());
    }
}
