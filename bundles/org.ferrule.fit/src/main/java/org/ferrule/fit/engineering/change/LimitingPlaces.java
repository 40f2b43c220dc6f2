/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.change;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Finds where the figures of a limiting place are printed. */
public final class LimitingPlaces {
    private LimitingPlaces() {
    }

    /** The section of the inner device; where several of that name overlap there, the thickest. */
    public static Optional<Place.Shaft> shaft(FitQuestion question, Limiting limiting) {
        return shaft(question.inner().device(), limiting.deviceSection(), limiting.deviceStation());
    }

    /** The section of that name of a device at a station from its tip; where several overlap there, the thickest. */
    public static Optional<Place.Shaft> shaft(Device device, String section, Length station) {
        return IntStream.range(0, device.sections().size()).mapToObj(i -> new Place.Shaft(device, i))
                .filter(p -> p.name().equals(section))
                .filter(p -> covers(p.section().from(), p.section().to(), station))
                .max(Comparator.comparing(p -> p.printed().stream().filter(Dimension::readable).map(Dimension::label)
                        .max(Length::compareTo).orElse(Length.ZERO)));
    }

    /**
     * The section of the lumen, or of an extension's on the way, which answers name after the extension; where several
     * of that name overlap there, the narrowest.
     */
    public static Optional<Place.Bore> bore(FitQuestion question, Limiting limiting) {
        Length collar = question.conditions().through().map(t -> question.lumen().length().plus(t.protrusion())
                .minus(t.lumen().proximalAt())).orElse(Length.ZERO);
        return narrowest(question.outer().device(), question.lumen(), "", Length.ZERO, limiting)
                .or(() -> question.conditions().through().flatMap(t -> narrowest(t.extension().device(), t.lumen(),
                        nameOf(t.extension().device()) + " ", collar, limiting)));
    }

    private static String nameOf(Device device) {
        return device.name().isEmpty() ? device.id() : device.name();
    }

    private static Optional<Place.Bore> narrowest(Device device, Lumen lumen, String prefix, Length movedBy,
            Limiting limiting) {
        Length station = limiting.lumenStation().minus(movedBy);
        return IntStream.range(0, lumen.sections().size()).mapToObj(i -> new Place.Bore(device, lumen, i))
                .filter(p -> (prefix + p.name()).equals(limiting.lumenSection()))
                .filter(p -> covers(p.section().from(), p.section().to(), station))
                .min(Comparator.comparing(p -> p.printed().stream().filter(Dimension::readable).map(Dimension::label)
                        .min(Length::compareTo).orElse(Length.ZERO)));
    }

    private static boolean covers(Length from, Length to, Length station) {
        return from.compareTo(station) <= 0 && station.compareTo(to) <= 0;
    }

    /** The inner device's own wire, where it lies beside the shaft at the limiting place. */
    public static Optional<Place.Wire> wire(FitQuestion question, PhaseAnswer answer) {
        boolean beside = answer.reasons().stream().anyMatch(r -> r.code() == ReasonCode.OWN_WIRE_BESIDE);
        return beside ? Optional.of(new Place.Wire(question.inner().device())) : Optional.empty();
    }
}
