/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.quantity.Length;

/**
 * What a cell of a matrix shows: the gist of an answer, without its reasons and its evidence.
 *
 * @param in on the way in
 * @param out on the way out, after use
 * @param hasConflict whether authorities contradict each other in any phase
 * @param hasCaution whether there is something to watch in any phase
 * @param limiting the place that decides going in; absent when the answer has no clearance
 */
public record FitCell(PhaseVerdict in, PhaseVerdict out, boolean hasConflict, boolean hasCaution,
        Optional<LimitingPlace> limiting) {

    /**
     * The place that decides, with the clearance there.
     *
     * @param worst smallest lumen, largest device
     * @param nominal between the centres
     * @param lumenSection name of the lumen's section; empty when the answer names no place
     * @param deviceSection name of the inner device's section; empty when the answer names no place
     */
    public record LimitingPlace(Length worst, Length nominal, String lumenSection, String deviceSection) {

        public LimitingPlace {
            Objects.requireNonNull(worst, "worst");
            Objects.requireNonNull(nominal, "nominal");
            Objects.requireNonNull(lumenSection, "lumenSection");
            Objects.requireNonNull(deviceSection, "deviceSection");
        }
    }

    public FitCell {
        Objects.requireNonNull(in, "in");
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(limiting, "limiting");
    }

    /** The gist of an answer. */
    public static FitCell of(FitAnswer answer) {
        PhaseAnswer in = answer.in();
        PhaseAnswer out = answer.out();
        return new FitCell(PhaseVerdict.of(in), PhaseVerdict.of(out), in.hasConflict() || out.hasConflict(),
                in.hasCaution() || out.hasCaution(), in.clearance().map(c -> place(c, in.limiting())));
    }

    private static LimitingPlace place(Clearance clearance, Optional<Limiting> limiting) {
        return new LimitingPlace(clearance.worst(), clearance.nominal(),
                limiting.map(Limiting::lumenSection).orElse(""), limiting.map(Limiting::deviceSection).orElse(""));
    }
}
