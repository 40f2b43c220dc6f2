/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Length;

/**
 * Does this device go through that lumen?
 *
 * @param outer the device around
 * @param lumen of {@code outer}
 * @param inner the device inside; over-the-wire: the wire
 * @param direction how it enters
 * @param reach tip first: how far the inner tip must come beyond the outer tip; over-the-wire: how much wire stays
 *              beyond the outer tip. Absent: hub to hub, or the rule set's wire ahead
 * @param rules in force
 */
public record FitQuestion(ReadDevice outer, Lumen lumen, ReadDevice inner, Direction direction,
        Optional<Length> reach, RuleSet rules) {

    public FitQuestion {
        Objects.requireNonNull(outer, "outer");
        Objects.requireNonNull(lumen, "lumen");
        Objects.requireNonNull(inner, "inner");
        Objects.requireNonNull(direction, "direction");
        Objects.requireNonNull(reach, "reach");
        Objects.requireNonNull(rules, "rules");
        if (reach.isPresent() && direction == Direction.OVER_WIRE_TAIL && reach.get().isNegative()) {
            throw new IllegalArgumentException(
                    "over a wire the reach is the wire that stays ahead; " + reach.get().mm() + " mm is negative");
        }
    }

    /** The clearance that the rule set asks for. */
    public Length requiredClearance() {
        return rules.clearance(outer.device().kind(), inner.device().kind()).required();
    }

    /**
     * How far the leading end has to travel from the end of the lumen that it enters; absent when the length that
     * decides it is not stated.
     */
    public Optional<Length> travel() {
        Optional<Length> innerLength = inner.device().insertableLength();
        if (direction == Direction.OVER_WIRE_TAIL) {
            Length ahead = reach.orElseGet(rules::wireAheadOrFail);
            return innerLength.map(length -> length.minus(ahead).max(Length.ZERO));
        }
        return reach.map(this::travelToReach).or(() -> innerLength);
    }

    /** How long the inner device must be for the reach that is asked for; zero when none is. */
    public Length lengthNeeded() {
        if (reach.isEmpty()) {
            return Length.ZERO;
        }
        return direction == Direction.OVER_WIRE_TAIL ? lumen.length().plus(reach.get()) : travelToReach(reach.get());
    }

    private Length travelToReach(Length beyondTip) {
        return lumen.length().plus(lumen.distalAt()).plus(beyondTip);
    }
}
