/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** The outline of a shaft across its axis, with dimensions as printed. */
public sealed interface Contour {

    /**
     * A round shaft.
     *
     * @param diameter outer diameter; absent when nobody states it
     */
    record Round(Optional<Dimension> diameter) implements Contour {
        public Round {
            Objects.requireNonNull(diameter, "diameter");
        }
    }

    /**
     * A shaft with two flat sides and round ends (a stadium), such as a dual-lumen shaft or a push rod.
     *
     * @param width the larger measure
     * @param height the smaller measure
     */
    record Oval(Dimension width, Dimension height) implements Contour {
        public Oval {
            Objects.requireNonNull(width, "width");
            Objects.requireNonNull(height, "height");
        }
    }

    /**
     * Several round members that keep their places to each other.
     *
     * @param members at least one
     */
    record Bundle(List<Member> members) implements Contour {
        public Bundle {
            members = List.copyOf(members);
            if (members.isEmpty()) {
                throw new IllegalArgumentException("a bundle needs at least one member");
            }
        }
    }

    /**
     * One round member of a bundle.
     *
     * @param x of its centre
     * @param y of its centre
     * @param diameter as printed
     */
    record Member(Length x, Length y, Dimension diameter) {
    }
}
