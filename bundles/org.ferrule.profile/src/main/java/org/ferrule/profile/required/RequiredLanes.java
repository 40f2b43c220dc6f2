/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.required;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.size.RequiredSize;
import org.ferrule.fit.engineering.size.Size;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * All partners of a section in one phase, a lane for each. Diameters are those that the section prints at its distal
 * end; those of a taper's other end move along.
 *
 * @param required as found by the search
 * @param phase going in or coming out
 */
public record RequiredLanes(RequiredSize required, Phase phase) {
    private static final Length LEAST_ROOM = Length.of("0.05", LengthUnit.MILLIMETRE);
    private static final long PERCENT = 100;
    private static final long ROOM_PERCENT = 15;

    /**
     * A partner whose verdict is another one at another diameter.
     *
     * @param lane of the partner
     * @param before the verdict at the first diameter
     * @param after the verdict at the second diameter
     */
    public record Change(PartnerLane lane, Verdict before, Verdict after) {
    }

    public RequiredLanes {
        Objects.requireNonNull(required, "required");
        Objects.requireNonNull(phase, "phase");
    }

    /** The lanes, in the order in which the partners were asked. */
    public List<PartnerLane> lanes() {
        return required.partners().stream().filter(partner -> partner.phase() == phase)
                .map(partner -> new PartnerLane(partner, required.section().isBore())).toList();
    }

    /** The diameter that the section prints. */
    public Length printed() {
        return required.section().printed().distal();
    }

    /** Every diameter at which a verdict flips: the last one with the verdict below it, in rising order. */
    public List<Length> flips() {
        return required.flips(phase).stream().map(flip -> flip.flip().last().distal()).distinct().toList();
    }

    /**
     * The largest diameter of a shaft, or the smallest of a lumen, at which every partner has that verdict or a better
     * one; absent when none does, or when nothing limits it.
     */
    public Optional<Length> limit(Verdict verdict) {
        Size end = required.section().isBore() ? required.least() : required.most();
        return required.limit(verdict, phase).filter(size -> !size.equals(end)).map(Size::distal);
    }

    /** The partners whose verdicts differ between two diameters. */
    public List<Change> changes(Length before, Length after) {
        return lanes().stream().flatMap(lane -> {
            Verdict first = lane.at(before);
            Verdict second = lane.at(after);
            return first == second ? Stream.<Change>empty() : Stream.of(new Change(lane, first, second));
        }).toList();
    }

    /** The smallest diameter worth showing: what is printed and all flips, with some room. */
    public Length from() {
        Length least = Stream.concat(Stream.of(printed()), flips().stream()).min(Length::compareTo).orElseThrow();
        return least.minus(room()).max(required.least().distal());
    }

    /** The largest diameter worth showing. */
    public Length to() {
        return largest().plus(room()).min(required.most().distal());
    }

    private Length largest() {
        return Stream.concat(Stream.of(printed()), flips().stream()).max(Length::compareTo).orElseThrow();
    }

    private Length room() {
        Length least = Stream.concat(Stream.of(printed()), flips().stream()).min(Length::compareTo).orElseThrow();
        return largest().minus(least).times(ROOM_PERCENT).dividedBy(PERCENT).max(LEAST_ROOM);
    }
}
