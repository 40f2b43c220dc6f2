/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.Optional;

/**
 * What covers an area: an even ground, a hatch over it, either alone, or nothing.
 *
 * @param ground the even colour, if any
 * @param hatch the hatch over it, if any
 */
public record Fill(Optional<Ink> ground, Optional<Hatch> hatch) {

    /** Nothing: what lies below shows. */
    public static final Fill NONE = new Fill(Optional.empty(), Optional.empty());

    /** An even colour. */
    public static Fill of(Ink ground) {
        return new Fill(Optional.of(ground), Optional.empty());
    }

    /** A hatch on what lies below. */
    public static Fill of(Hatch hatch) {
        return new Fill(Optional.empty(), Optional.of(hatch));
    }

    /** A hatch on an even colour. */
    public static Fill of(Ink ground, Hatch hatch) {
        return new Fill(Optional.of(ground), Optional.of(hatch));
    }

    /** Whether nothing is covered. */
    public boolean isNone() {
        return ground.isEmpty() && hatch.isEmpty();
    }
}
