/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** The single figure of a label that a claim is compared with. */
public final class Labels {
    private Labels() {
    }

    /**
     * The extreme of the figures that a label prints.
     *
     * @param extreme of those that can be read
     * @param complete whether all that are needed can be read; if not, the true extreme may lie beyond
     */
    public record Label(Length extreme, boolean complete) {
    }

    /** The smallest printed inner diameter of the lumen; absent when none can be read. */
    public static Optional<Label> ofLumen(Lumen lumen) {
        return read(lumen.sections().stream().flatMap(s -> Stream.of(s.proximal(), s.distal())), Length::min);
    }

    /** The largest printed outer diameter of what enters the lumen; absent when none can be read. */
    static Optional<Label> ofWhatEnters(FitQuestion question) {
        return ofSections(question.inner().device().sections().stream()
                .filter(s -> question.enters(s.from(), s.to())).toList());
    }

    /** The largest printed outer diameter of sections of a shaft; absent when none can be read. */
    public static Optional<Label> ofSections(List<ShaftSection> sections) {
        return read(sections.stream().flatMap(s -> Stream.of(printed(s.distal()), printed(s.proximal()))),
                Length::max);
    }

    private static Optional<Dimension> printed(Contour contour) {
        if (contour instanceof Contour.Round round) {
            return round.diameter();
        }
        return contour instanceof Contour.Oval oval ? Optional.of(oval.width()) : Optional.empty();
    }

    private static Optional<Label> read(Stream<Optional<Dimension>> printed, BinaryOperator<Length> choose) {
        boolean complete = true;
        Length extreme = null;
        for (Optional<Dimension> one : printed.toList()) {
            if (one.isPresent() && one.get().readable()) {
                Length label = one.get().label();
                extreme = extreme == null ? label : choose.apply(extreme, label);
            } else {
                complete = false;
            }
        }
        return extreme == null ? Optional.empty() : Optional.of(new Label(extreme, complete));
    }
}
