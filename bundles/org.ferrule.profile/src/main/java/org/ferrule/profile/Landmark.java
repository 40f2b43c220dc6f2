/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Parts.MarkerPart;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.profile.curve.DeviceCurves;
import org.ferrule.quantity.Length;

/**
 * A place that devices have in common, from which the stations of a comparison count.
 *
 * @param kind which place
 * @param number of a marker or a rigid part, from the tip, 1 or more; 1 for the others
 */
public record Landmark(Kind kind, int number) {
    /** The distal tip. */
    public static final Landmark TIP = new Landmark(Kind.TIP, 1);

    private static final Pattern WORD = Pattern.compile("([a-z ]*[a-z])(?: ([1-9][0-9]?))?");

    /** Places that devices can have in common. */
    public enum Kind {
        /** The distal tip. */
        TIP("tip"),
        /** The distal edge of a marker. */
        MARKER("marker"),
        /** The most distal port or collar at which a wire leaves the shaft. */
        EXIT_PORT("exit port"),
        /** The distal end of the largest outer diameter. */
        LARGEST_PART("largest part"),
        /** The proximal end of a rigid part. */
        RIGID_END("rigid end");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word for it. */
        public String word() {
            return word;
        }

        /** Whether a device may have several of them. */
        public boolean isNumbered() {
            return this == MARKER || this == RIGID_END;
        }
    }

    public Landmark {
        if (number < 1 || number > 1 && !kind.isNumbered()) {
            throw new IllegalArgumentException("there is no " + kind.word() + " " + number);
        }
    }

    /** The place of that kind, or the most distal of several. */
    public static Landmark of(Kind kind) {
        return new Landmark(kind, 1);
    }

    /**
     * Reads "tip", "marker", "marker 2", "exit port", "largest part", "rigid end", "rigid end 2".
     *
     * @throws IllegalArgumentException naming the text and the words that there are
     */
    public static Landmark parse(String text) {
        Matcher word = WORD.matcher(text.strip());
        for (Kind kind : Kind.values()) {
            if (word.matches() && word.group(1).equals(kind.word) && (word.group(2) == null || kind.isNumbered())) {
                return new Landmark(kind, word.group(2) == null ? 1 : Integer.parseInt(word.group(2)));
            }
        }
        throw new IllegalArgumentException("\"" + text
                + "\" is no landmark: tip, marker, marker 2, exit port, largest part, rigid end, rigid end 2 are");
    }

    /** The words that {@link #parse} reads. */
    public String word() {
        return number == 1 ? kind.word() : kind.word() + " " + number;
    }

    /** Where a device has it, from its distal tip; absent when it has none, or when nobody states where. */
    public Optional<Length> on(ReadDevice read) {
        Device device = read.device();
        return switch (kind) {
            case TIP -> Optional.of(Length.ZERO);
            case MARKER -> nth(device.parts().markers().stream().map(MarkerPart::station).sorted().toList());
            case EXIT_PORT -> exitPort(device);
            case LARGEST_PART -> DeviceCurves.of(read, Length.ZERO).outer().largestAt();
            case RIGID_END -> nth(device.sections().stream().filter(ShaftSection::rigid)
                    .sorted(Comparator.comparing(ShaftSection::from)).map(ShaftSection::to).toList());
        };
    }

    private Optional<Length> nth(List<Length> stations) {
        return stations.stream().skip(number - 1L).findFirst();
    }

    private static Optional<Length> exitPort(Device device) {
        List<Lumen> leaving = device.lumens().stream().filter(l -> l.use() == Lumen.Use.WIRE && l.leavesShaft())
                .toList();
        Optional<Lumen> port = leaving.stream().min(Comparator.comparing(Lumen::proximalAt))
                .or(() -> device.wireLumen().filter(Lumen::leavesShaft));
        return port.filter(lumen -> lumen.proximalStated() && leaving.stream().noneMatch(Lumen::portUnknown))
                .map(Lumen::proximalAt);
    }
}
