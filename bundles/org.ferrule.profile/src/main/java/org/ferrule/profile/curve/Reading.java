/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import java.util.List;
import java.util.Objects;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.verdict.Reason;

/** What a curve says of one station. */
public sealed interface Reading {

    /**
     * A diameter.
     *
     * @param figure as an interval
     * @param assumed whether the rule set gives an end, or the centre, that the label does not state
     * @param section that it belongs to; may be empty
     * @param source where it was read
     */
    record Known(Figure figure, boolean assumed, String section, SourceRef source) implements Reading {
        public Known {
            Objects.requireNonNull(figure, "figure");
        }
    }

    /**
     * There is something, but nobody states its diameter.
     *
     * @param section of which it is not known; may be empty
     * @param why as far as that can be said
     */
    record Unknown(String section, List<Reason> why) implements Reading {
        public Unknown {
            why = List.copyOf(why);
        }
    }

    /** The curve does not reach there. */
    record Beyond() implements Reading {
    }
}
