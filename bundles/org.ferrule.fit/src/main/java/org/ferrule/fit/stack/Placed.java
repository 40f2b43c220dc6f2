/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.quantity.Length;

/**
 * A device in its place.
 *
 * @param device the device, over the wire that it runs over
 * @param ahead how far its tip lies beyond the tip of the level that holds it; negative when it lies inside. Of no
 *              meaning for the outermost device and for a valve
 * @param used whether it has its outline after use (a re-wrapped balloon)
 * @param lumen name of its lumen that holds the next level; absent for the one that is usually meant
 */
public record Placed(ReadDevice device, Length ahead, boolean used, Optional<String> lumen) {

    public Placed {
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(ahead, "ahead");
        Objects.requireNonNull(lumen, "lumen");
    }

    /** An unused device; its usual lumen holds the next level. */
    public Placed(ReadDevice device, Length ahead) {
        this(device, ahead, false, Optional.empty());
    }

    /** The lumen that holds the next level, when it has one. */
    Optional<Lumen> holding() {
        return lumen.map(device.device()::lumen).or(device.device()::mainLumen);
    }
}
