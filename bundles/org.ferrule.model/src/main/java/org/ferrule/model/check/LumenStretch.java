/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.model.Lumen;
import org.ferrule.model.LumenSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * A section of a lumen with its stations from the lumen's proximal entry.
 *
 * @param section the section
 * @param from the station of its proximal end
 * @param to the station of its distal end
 */
record LumenStretch(LumenSection section, Length from, Length to) {

    /**
     * Returns the sections whose stations are known, from the entry on.
     *
     * @param length the length of the lumen, which is where a section without an end ends
     */
    static List<LumenStretch> all(Lumen lumen, Optional<Length> length) {
        return lumen.getSections().stream().flatMap(section -> of(section, length))
                .sorted(Comparator.comparing(LumenStretch::from)).toList();
    }

    private static Stream<LumenStretch> of(LumenSection section, Optional<Length> length) {
        Optional<Length> from = station(section.getFrom(), Optional.of(Length.ZERO));
        Optional<Length> to = station(section.getTo(), length);
        return from.flatMap(f -> to.map(t -> new LumenStretch(section, f, t))).stream();
    }

    private static Optional<Length> station(Dimension stated, Optional<Length> otherwise) {
        return stated == null ? otherwise : Lengths.of(stated);
    }
}
