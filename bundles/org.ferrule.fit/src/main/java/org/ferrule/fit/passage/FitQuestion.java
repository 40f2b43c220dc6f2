/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Device;
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
 * @param reach tip first: how far the inner tip must come beyond the outer tip, or beyond the tip of an extension that
 *              protrudes from it; over-the-wire: how much wire stays beyond the outer tip. Absent: hub to hub, or the
 *              rule set's wire ahead
 * @param conditions what else holds
 * @param rules in force
 */
public record FitQuestion(ReadDevice outer, Lumen lumen, ReadDevice inner, Direction direction,
        Optional<Length> reach, Conditions conditions, RuleSet rules) {

    public FitQuestion {
        Objects.requireNonNull(outer, "outer");
        Objects.requireNonNull(lumen, "lumen");
        Objects.requireNonNull(inner, "inner");
        Objects.requireNonNull(direction, "direction");
        Objects.requireNonNull(reach, "reach");
        Objects.requireNonNull(conditions, "conditions");
        Objects.requireNonNull(rules, "rules");
        if (!outer.device().lumens().contains(lumen)) {
            throw new IllegalArgumentException(
                    "device \"" + outer.device().id() + "\" has no such lumen \"" + lumen.name() + "\"");
        }
        if (direction == Direction.OVER_WIRE_TAIL && !conditions.alone()) {
            throw new IllegalArgumentException("device \"" + outer.device().id() + "\" over the tail of wire \""
                    + inner.device().id() + "\": what else lies in a lumen is asked tip first only");
        }
        if (reach.isPresent() && direction == Direction.OVER_WIRE_TAIL && reach.get().isNegative()) {
            throw new IllegalArgumentException(
                    "over a wire the reach is the wire that stays ahead; " + reach.get().mm() + " mm is negative");
        }
    }

    /** The question about a device that passes alone, straight and unused. */
    public FitQuestion(ReadDevice outer, Lumen lumen, ReadDevice inner, Direction direction, Optional<Length> reach,
            RuleSet rules) {
        this(outer, lumen, inner, direction, reach, Conditions.NONE, rules);
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
        return asksForDistance() ? Optional.of(lengthNeeded()) : inner.device().statedLength().map(this::travelOfAll);
    }

    /** The travel that surely happens, where {@link #travel()} is not known: that of the sections described. */
    public Length leastTravel() {
        return travel().or(() -> inner.device().insertableLength().map(this::travelOfAll)).orElse(lumen.length());
    }

    private boolean asksForDistance() {
        return reach.isPresent() && direction == Direction.TIP_FIRST;
    }

    private Length travelOfAll(Length innerLength) {
        return direction == Direction.TIP_FIRST ? innerLength
                : innerLength.minus(lengthBeyondLumen()).max(Length.ZERO);
    }

    /** Whether a stretch of the inner device, in stations from its tip, enters the lumen on the way. */
    public boolean enters(Length from, Length to) {
        if (direction == Direction.OVER_WIRE_TAIL) {
            return to.compareTo(lengthBeyondLumen()) > 0;
        }
        return travel().map(t -> from.compareTo(t) < 0).orElse(true);
    }

    /**
     * How long the inner device must be: tip first for the reach that is asked for, zero when none is; over a wire to
     * come out of the lumen at its other end.
     */
    public Length lengthNeeded() {
        boolean hubToHub = reach.isEmpty() && direction == Direction.TIP_FIRST;
        return hubToHub ? Length.ZERO : lumen.length().plus(lengthBeyondLumen());
    }

    /** How much of the inner device is to lie beyond the distal opening of the lumen. */
    private Length lengthBeyondLumen() {
        return outerTipAhead().plus(reach.orElseGet(rules::wireAheadOrFail));
    }

    /**
     * How far the tip from which the reach counts lies beyond the distal opening of the lumen: that of the outer
     * device, or of an extension that protrudes from it.
     */
    public Length outerTipAhead() {
        return conditions.through().map(t -> t.protrusion().max(lumen.distalAt())).orElse(lumen.distalAt());
    }

    /**
     * Where the lumen that the device passes last opens, from the proximal entry of the way: that of the outer device,
     * or of the extension in it.
     */
    public Length opensAt() {
        return conditions.through().map(t -> t.opensAt(lumen.length())).orElse(lumen.length());
    }

    /**
     * The lumen along the whole way, from its proximal entry: that of the outer device, and from its collar to its
     * opening that of an extension in it. Where nobody can tell where the extension lies, the outer one's alone.
     */
    public List<Stretch> bore() {
        return Way.bore(this);
    }

    /** Whether nobody can tell where others lie on the way, since a length is not stated that decides it. */
    boolean hidesWhereOthersLie() {
        return !conditions.alone() && unstatedOfWay().isPresent();
    }

    private Optional<Device> unstatedOfWay() {
        if (lumen.length().equals(Length.ZERO)) {
            return Optional.of(outer.device());
        }
        return conditions.through().filter(t -> t.lumen().length().equals(Length.ZERO))
                .map(t -> t.extension().device());
    }

    /**
     * The device whose length decides how far it goes, but is not stated. Where the sections that are described go far
     * enough for the reach, the length does not matter.
     */
    public Optional<Device> ofUnstatedLength() {
        if ((reach.isPresent() || !conditions.alone()) && unstatedOfWay().isPresent()) {
            return unstatedOfWay();
        }
        Device device = inner.device();
        boolean decides = !asksForDistance()
                || device.insertableLength().orElse(Length.ZERO).compareTo(lengthNeeded()) < 0;
        return device.statedLength().isEmpty() && decides ? Optional.of(device) : Optional.empty();
    }
}
