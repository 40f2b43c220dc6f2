/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.Optional;

/**
 * How a shape is drawn: the fill first, the outline over it.
 *
 * @param stroke the outline, if any
 * @param fill what covers the area
 */
public record Style(Optional<Stroke> stroke, Fill fill) {

    /** An outline only. */
    public static Style of(Stroke stroke) {
        return new Style(Optional.of(stroke), Fill.NONE);
    }

    /** A fill only. */
    public static Style of(Fill fill) {
        return new Style(Optional.empty(), fill);
    }

    /** An outline and a fill. */
    public static Style of(Stroke stroke, Fill fill) {
        return new Style(Optional.of(stroke), fill);
    }
}
