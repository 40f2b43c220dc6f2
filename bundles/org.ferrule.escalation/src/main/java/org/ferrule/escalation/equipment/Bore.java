/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Taper;
import org.ferrule.quantity.Length;

/** How wide a lumen is, as far as all of it is known. */
final class Bore {
    private Bore() {
    }

    /** The smallest inner diameter that is sure. */
    static Optional<Length> narrowest(ReadDevice device, Lumen lumen) {
        return tapers(device, lumen)
                .flatMap(all -> all.stream().map(t -> t.smallest().low()).min(Comparator.naturalOrder()));
    }

    /** Where it is widest. */
    static Optional<Figure> widest(ReadDevice device, Lumen lumen) {
        return tapers(device, lumen).flatMap(all -> all.stream().map(Taper::largest).reduce(Figure::max));
    }

    private static Optional<List<Taper>> tapers(ReadDevice device, Lumen lumen) {
        List<Stretch> bore = device.bore(lumen);
        boolean known = !bore.isEmpty() && bore.stream().allMatch(s -> s.diameter().isPresent());
        return known ? Optional.of(bore.stream().map(s -> s.diameter().orElseThrow()).toList()) : Optional.empty();
    }
}
