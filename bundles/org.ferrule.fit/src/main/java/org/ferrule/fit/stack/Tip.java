/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Length;

/**
 * How far a device of a stack reaches.
 *
 * @param device its id
 * @param fromHub how far its tip lies from the hub of the outermost device
 * @param outside how much of its effective length stays outside that hub; absent when its length is not stated
 */
public record Tip(String device, Length fromHub, Optional<Length> outside) {

    public Tip {
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(fromHub, "fromHub");
        Objects.requireNonNull(outside, "outside");
    }
}
