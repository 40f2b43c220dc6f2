/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.Objects;

import org.ferrule.fit.device.Lumen;
import org.ferrule.quantity.Length;

/**
 * A guide extension in place, through which a device passes: from its collar to its tip the extension's lumen replaces
 * the outer one; proximal to the collar the outer lumen stays, with the push rod as an occupant.
 *
 * @param extension the extension
 * @param lumen of {@code extension} that the device passes
 * @param protrusion how far its tip lies beyond the outer device's distal opening; negative when it lies inside
 */
public record Through(ReadDevice extension, Lumen lumen, Length protrusion) {

    public Through {
        Objects.requireNonNull(extension, "extension");
        Objects.requireNonNull(lumen, "lumen");
        Objects.requireNonNull(protrusion, "protrusion");
        if (!extension.device().lumens().contains(lumen)) {
            throw new IllegalArgumentException("device \"" + extension.device().id() + "\" has no such lumen \""
                    + lumen.name() + "\"");
        }
    }
}
