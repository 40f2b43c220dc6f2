/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.rules;

import java.util.Objects;
import java.util.Set;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Length;

/**
 * How far a real part may lie from its stated centre, where the label does not say. The two sides may differ, since
 * some kinds of stated figures run low.
 *
 * @param figure the class of figures it is for
 * @param kinds the device kinds it is for; empty for all
 * @param below how far a part may lie below its centre, 0 or more
 * @param above how far a part may lie above its centre, 0 or more
 * @param runsLow whether the source says that stated figures of this kind run low: then {@code above} holds the bias
 * @param source who says so
 */
public record Span(FigureClass figure, Set<DeviceKind> kinds, Length below, Length above, boolean runsLow,
        SourceRef source) {

    public Span {
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(source, "source");
        kinds = Set.copyOf(kinds);
        if (below.isNegative() || above.isNegative()) {
            throw new IllegalArgumentException("a span of " + figure.word() + " has a negative side: below "
                    + below.mm() + " mm, above " + above.mm() + " mm");
        }
    }

    /** A span of figures that are not known to run low. */
    public Span(FigureClass figure, Set<DeviceKind> kinds, Length below, Length above, SourceRef source) {
        this(figure, kinds, below, above, false, source);
    }

    /** The span without the bias that it holds: as far above the centre as below. */
    Span withoutBias() {
        return runsLow ? new Span(figure, kinds, below, above.min(below), false, source) : this;
    }
}
