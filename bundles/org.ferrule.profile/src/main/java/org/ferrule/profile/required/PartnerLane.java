/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.required;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.engineering.size.Flip;
import org.ferrule.fit.engineering.size.Holds;
import org.ferrule.fit.engineering.size.PartnerSizes;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * The verdict of one partner along the diameter of a section.
 *
 * @param sizes as found by the search
 * @param isBore whether the section is one of a lumen, so that the partner lies inside
 */
public record PartnerLane(PartnerSizes sizes, boolean isBore) {

    /**
     * A range of diameters with one verdict, both ends included.
     *
     * @param from absent where it begins below all that was looked at
     * @param to absent where it ends above all that was looked at
     * @param verdict of all diameters in it
     */
    public record Range(Optional<Length> from, Optional<Length> to, Verdict verdict) {

        boolean holds(Length diameter) {
            return from.map(f -> f.compareTo(diameter) <= 0).orElse(true)
                    && to.map(t -> t.compareTo(diameter) >= 0).orElse(true);
        }
    }

    public PartnerLane {
        Objects.requireNonNull(sizes, "sizes");
    }

    /** The device that the section is to go with. */
    public Device partner() {
        return isBore ? sizes.question().inner().device() : sizes.question().outer().device();
    }

    /** Its name, or its id where it has none. */
    public String name() {
        return partner().name().isEmpty() ? partner().id() : partner().name();
    }

    /** The ranges in rising diameter; they touch, a third of a nanometre apart. */
    public List<Range> ranges() {
        List<Range> ranges = new ArrayList<>();
        Optional<Length> from = Optional.empty();
        for (Flip flip : sizes.flips()) {
            ranges.add(new Range(from, Optional.of(flip.last().distal()), flip.below()));
            from = Optional.of(flip.first().distal());
        }
        Verdict last = sizes.flips().isEmpty() ? sizes.easiest().verdict()
                : sizes.flips().get(sizes.flips().size() - 1).above();
        ranges.add(new Range(from, Optional.empty(), last));
        return List.copyOf(ranges);
    }

    /** The verdict at a diameter of the section's distal end. */
    public Verdict at(Length diameter) {
        return ranges().stream().filter(range -> range.holds(diameter)).findFirst().map(Range::verdict).orElseThrow();
    }

    /** How a verdict of this lane looks. */
    public VerdictLook look(Verdict verdict) {
        PhaseAnswer nearest = verdict == sizes.easiest().verdict() ? sizes.easiest() : sizes.hardest();
        return VerdictLook.of(verdict, nearest.authority());
    }

    /** What keeps its verdict from flipping; absent when it flips. */
    public Optional<Holds> heldBy() {
        return sizes.flips().isEmpty() ? sizes.heldBy() : Optional.empty();
    }
}
