/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

import org.ferrule.quantity.Length;

/**
 * Lengths that add up to what is left over.
 *
 * @param question what is added up
 * @param links in the order in which they are added
 * @param margin the sum; negative when something is too short
 */
public record LengthChain(Question question, List<Link> links, Length margin) implements Evidence {

    /** What lengths are added up for. */
    public enum Question {
        /** Whether a device comes as far as is asked. */
        REACH,
        /** Whether the side port stays inside the outer device. */
        PORT_INSIDE,
        /** Whether enough of a guide extension's tube stays inside the guide. */
        OVERLAP,
        /** Whether a wire is long enough to exchange a device over it. */
        EXCHANGE,
        /** Whether there is room beyond the lesion for the tip. */
        LANDING
    }

    /**
     * One length of a chain.
     *
     * @param part what it is the length of
     * @param device id of the device that it belongs to; empty for an allowance of the rule set
     * @param length added when positive, taken off when negative
     */
    public record Link(Part part, String device, Length length) {
        public Link {
            Objects.requireNonNull(part, "part");
            Objects.requireNonNull(device, "device");
            Objects.requireNonNull(length, "length");
        }
    }

    /** What a link is the length of. */
    public enum Part {
        EFFECTIVE_LENGTH, LUMEN_LENGTH, HUB_AND_VALVE, REACH_ASKED, PORT_STATION, TUBE_LENGTH, PROTRUSION,
        LEAST_OVERLAP,
        WIRE_LENGTH, WIRE_IN_BODY, GRIP, LANDING_ROOM, TIP_TO_PLANE
    }

    /** A chain with the sum of its links. */
    public static LengthChain of(Question question, Link... links) {
        Length sum = Arrays.stream(links).map(Link::length).reduce(Length.ZERO, Length::plus);
        return new LengthChain(question, List.of(links), sum);
    }

    public LengthChain {
        Objects.requireNonNull(question, "question");
        links = List.copyOf(links);
        Objects.requireNonNull(margin, "margin");
    }
}
