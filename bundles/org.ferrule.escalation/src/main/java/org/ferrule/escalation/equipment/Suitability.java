/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * Whether a device can play a role in a system, as far as geometry and labels say.
 *
 * @param crossings all that it has to come through; none where it passes nothing
 * @param filling whether it fills what it has to fill; absent where it only passes
 */
public record Suitability(List<Crossing> crossings, Optional<Filling> filling) {

    /** Of what passes nothing. */
    public static final Suitability STANDS_BY = new Suitability(List.of(), Optional.empty());

    public Suitability {
        crossings = List.copyOf(crossings);
        Objects.requireNonNull(filling, "filling");
    }

    /** The worst of all. */
    public Verdict verdict() {
        return Stream.concat(crossings.stream().map(Crossing::verdict), filling.stream().map(Filling::verdict))
                .reduce(Verdict.FITS, Verdict::worse);
    }

    /** Whether it may be planned with: it fits, or it is tight. What is unknown may not. */
    public boolean isUsable() {
        return verdict() == Verdict.FITS || verdict() == Verdict.TIGHT;
    }

    /** The crossing that decides: the one with the worst verdict, of these the tightest. */
    public Optional<Crossing> deciding() {
        return crossings.stream().max(Comparator.comparing(Crossing::verdict)
                .thenComparing(c -> c.worstClearance().map(Length::negated).orElse(null),
                        Comparator.nullsFirst(Comparator.naturalOrder())));
    }

    /** The smallest clearance that is sure; absent where none is known. */
    public Optional<Length> worstClearance() {
        return crossings.stream().flatMap(c -> c.worstClearance().stream()).min(Comparator.naturalOrder());
    }
}
