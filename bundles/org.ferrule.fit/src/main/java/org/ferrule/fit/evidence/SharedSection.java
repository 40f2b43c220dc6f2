/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.evidence;

import java.util.List;
import java.util.Objects;

import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.quantity.Length;

/**
 * What lies side by side in a lumen where it is tightest, placed as a reader can draw and check it.
 *
 * @param lumenSection name of the lumen's section
 * @param lumenStation from the proximal entry of the whole way
 * @param lumen its diameter there
 * @param members of the moving device first, then of the others
 * @param neededAtLeast a proved lower bound of the diameter that all need together, at their centres
 * @param needed the diameter of the circle that the placed members need, at their centres
 */
public record SharedSection(String lumenSection, Length lumenStation, Figure lumen, List<Member> members,
        Length neededAtLeast, Length needed) implements Evidence {

    /** What a member is. */
    public enum Part {
        /** A shaft, or a part of one that is not round. */
        SHAFT,
        /** A wire beside the shaft that runs over it, or a wire of its own. */
        WIRE,
        /** The push rod of a guide extension. */
        PUSH_ROD
    }

    /**
     * One disc of what lies in the lumen.
     *
     * @param device id of the device that it belongs to
     * @param section name of its section; empty for a wire
     * @param part what it is
     * @param moving whether it belongs to the device that passes
     * @param figure its diameter
     * @param body number of the body that it belongs to: discs of one body keep their places to each other
     * @param filled whether the discs of that body are the ends of a stadium
     * @param disc where it lies, from the centre of the circle round all members
     */
    public record Member(String device, String section, Part part, boolean moving, Figure figure, int body,
            boolean filled, PlacedDisc disc) {
        public Member {
            Objects.requireNonNull(device, "device");
            Objects.requireNonNull(section, "section");
            Objects.requireNonNull(part, "part");
            Objects.requireNonNull(figure, "figure");
            Objects.requireNonNull(disc, "disc");
        }
    }

    public SharedSection {
        Objects.requireNonNull(lumenSection, "lumenSection");
        Objects.requireNonNull(lumenStation, "lumenStation");
        Objects.requireNonNull(lumen, "lumen");
        members = List.copyOf(members);
        Objects.requireNonNull(neededAtLeast, "neededAtLeast");
        Objects.requireNonNull(needed, "needed");
    }
}
