/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Dimension;

/** Says why a diameter is unknown. */
final class MissingFigures {
    private MissingFigures() {
    }

    static Reason missing(Device device, FigureClass figure, String where) {
        return Reason.of(ReasonCode.MISSING_FIGURE, Reason.name(device.id()), Reason.name(figure.word()),
                Reason.name(where));
    }

    /** The reason why one of these dimensions cannot be used, if one cannot. */
    @SafeVarargs
    static Optional<Reason> firstOf(Device device, FigureClass figure, String where, Optional<Dimension>... printed) {
        for (Optional<Dimension> one : printed) {
            if (one.isEmpty()) {
                return Optional.of(missing(device, figure, where));
            }
            if (!one.get().readable()) {
                return Optional.of(Reason.of(ReasonCode.UNREADABLE_FIGURE, Reason.name(device.id()),
                        Reason.name(one.get().text()), Reason.name(where)));
            }
        }
        return Optional.empty();
    }
}
