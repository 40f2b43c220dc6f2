/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.Optional;

import org.ferrule.fit.authority.Labels;
import org.ferrule.quantity.Length;

/**
 * The figure of a label that a claim is compared with, as a number.
 *
 * @param extreme in thirds of a nanometre; {@link #NONE} when none can be read
 * @param complete whether all figures that are needed can be read
 */
record QuickLabel(int extreme, boolean complete) {
    /** No figure. */
    static final int NONE = Integer.MIN_VALUE;
    /** The label of what prints nothing. */
    static final QuickLabel ABSENT = new QuickLabel(NONE, false);

    static QuickLabel of(Optional<Labels.Label> label) {
        return label.map(l -> new QuickLabel(number(l.extreme()), l.complete())).orElse(ABSENT);
    }

    /** The label of two parts, of which the larger figure counts. */
    QuickLabel with(QuickLabel other) {
        return new QuickLabel(Math.max(extreme, other.extreme), complete && other.complete);
    }

    /** A diameter as a number; what is larger than any device is as large as that. */
    static int number(Length diameter) {
        return (int) Math.max(-Integer.MAX_VALUE, Math.min(Integer.MAX_VALUE, diameter.thirdNanometres()));
    }
}
