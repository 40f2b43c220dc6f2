/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import java.util.List;
import java.util.Objects;

import org.ferrule.quantity.Length;

/**
 * An inner passage of a device.
 *
 * @param name unique within its device
 * @param use what runs in it
 * @param opening where its proximal end opens
 * @param distalAt station of its distal opening, from the distal tip of the device
 * @param proximalAt station of its proximal opening, from the distal tip of the device
 * @param proximalStated whether anybody states where its proximal opening is; if not, {@code proximalAt} is a guess
 * @param sections from its proximal entry to its distal opening; may be empty when nothing is known
 */
public record Lumen(String name, Use use, Opening opening, Length distalAt, Length proximalAt,
        boolean proximalStated, List<LumenSection> sections) {

    /** What runs in a lumen. */
    public enum Use {
        WORKING, WIRE, INFLATION, FLUSH, IMAGING
    }

    /** Where the proximal end of a lumen opens. */
    public enum Opening {
        /** At the hub: over the wire along the whole length. */
        HUB,
        /** At the side of the shaft (rapid exchange): proximal to it the wire lies beside the shaft. */
        SIDE_PORT,
        /** At the collar of a guide extension's tube: proximal to it what the tube holds lies beside the push rod. */
        COLLAR
    }

    public Lumen {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(use, "use");
        Objects.requireNonNull(opening, "opening");
        sections = List.copyOf(sections);
        if (proximalAt.compareTo(distalAt) < 0) {
            throw new IllegalArgumentException("lumen \"" + name + "\" opens proximally at " + proximalAt.mm()
                    + " mm, distal to its distal opening at " + distalAt.mm() + " mm");
        }
    }

    /** A lumen of which both openings are stated. */
    public Lumen(String name, Use use, Opening opening, Length distalAt, Length proximalAt,
            List<LumenSection> sections) {
        this(name, use, opening, distalAt, proximalAt, true, sections);
    }

    /** Its length from opening to opening; zero when nobody states where it opens. */
    public Length length() {
        return proximalAt.minus(distalAt);
    }

    /** Whether it leaves the shaft at the side, and nobody states where. */
    public boolean portUnknown() {
        return opening == Opening.SIDE_PORT && !proximalStated;
    }

    /** Whether the wire in it lies beside the shaft proximal to its opening. */
    public boolean leavesShaft() {
        return opening != Opening.HUB;
    }
}
