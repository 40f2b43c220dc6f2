/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.Terms;

/**
 * Lengths of a question in plain numbers: how far a device goes, whether it is long enough, what enters; as
 * {@code FitQuestion}, {@code LengthCheck} and {@code EdgeCheck} have it.
 *
 * @param tipFirst whether devices enter tip first
 * @param reachStated whether a reach is asked for
 */
record QuickTerms(boolean tipFirst, boolean reachStated) {

    static QuickTerms of(Terms terms) {
        return new QuickTerms(terms.direction() == Direction.TIP_FIRST, terms.reach().isPresent());
    }

    boolean asksForDistance() {
        return reachStated && tipFirst;
    }

    long travel(QuickOuter outer, QuickInner inner) {
        if (asksForDistance()) {
            return outer.lengthNeeded;
        }
        if (inner.insertableLength == QuickInner.NOT_STATED) {
            return outer.length;
        }
        return tipFirst ? inner.insertableLength : Math.max(0, inner.insertableLength - outer.beyond);
    }

    /** How far devices travel, less what each travels by its own length. */
    long travelLessOwn(QuickOuter outer) {
        return asksForDistance() ? outer.lengthNeeded : -outer.beyond;
    }

    boolean isLengthUnstated(QuickOuter outer, QuickInner inner) {
        if (reachStated && outer.length == 0) {
            return true;
        }
        return inner.statedLength == QuickInner.NOT_STATED
                && (!asksForDistance() || Math.max(0, inner.insertableLength) < outer.lengthNeeded);
    }

    /** What the check of lengths finds: a matter of a few numbers on either side. */
    int lengthVerdict(QuickOuter outer, QuickInner inner, boolean unstated) {
        if (inner.statedLength != QuickInner.NOT_STATED && inner.statedLength < outer.lengthNeeded) {
            return Passing.BLOCKED;
        }
        return reachStated && unstated ? Passing.UNKNOWN : Passing.FITS;
    }

    /** The label of what enters. */
    QuickLabel entering(QuickOuter outer, QuickInner inner) {
        if (!tipFirst) {
            return inner.labels.of(outer.beyond);
        }
        if (asksForDistance()) {
            return inner.labels.of(outer.lengthNeeded);
        }
        return inner.statedLength == QuickInner.NOT_STATED ? inner.labels.whole()
                : inner.labels.of(inner.statedLength);
    }

    /** The label of the wire in the question: the inner device, or the one that it runs over. */
    int wire(QuickOuter outer, QuickInner inner) {
        if (!inner.isWire) {
            return inner.wire;
        }
        QuickLabel label = entering(outer, inner);
        return label.complete() ? label.extreme() : QuickLabel.NONE;
    }
}
