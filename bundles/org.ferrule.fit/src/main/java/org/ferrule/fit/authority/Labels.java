/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** The single figure of a label that a claim is compared with. */
final class Labels {
    private Labels() {
    }

    /** The smallest printed inner diameter of a lumen; absent when a section has none. */
    static Optional<Length> ofLumen(Lumen lumen) {
        Stream<Optional<Dimension>> printed = lumen.sections().stream().flatMap(s -> Stream.of(s.proximal(), s.distal()));
        return extreme(printed, Length::min);
    }

    /** The largest printed outer diameter of a shaft; absent when a section has none. */
    static Optional<Length> ofShaft(Device device) {
        Stream<Optional<Dimension>> printed = device.sections().stream().flatMap(Labels::printed);
        return extreme(printed, Length::max);
    }

    private static Stream<Optional<Dimension>> printed(ShaftSection section) {
        return Stream.of(printed(section.distal()), printed(section.proximal()));
    }

    private static Optional<Dimension> printed(Contour contour) {
        if (contour instanceof Contour.Round round) {
            return round.diameter();
        }
        return contour instanceof Contour.Oval oval ? Optional.of(oval.width()) : Optional.empty();
    }

    private static Optional<Length> extreme(Stream<Optional<Dimension>> printed,
            java.util.function.BinaryOperator<Length> choose) {
        Optional<Optional<Length>> all = printed.map(p -> p.filter(Dimension::readable).map(Dimension::label))
                .reduce((a, b) -> a.isPresent() && b.isPresent() ? Optional.of(choose.apply(a.get(), b.get()))
                        : Optional.empty());
        return Objects.requireNonNull(all).flatMap(o -> o);
    }
}
