/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.passage.Transit.Missing;
import org.ferrule.fit.verdict.Lane;
import org.ferrule.quantity.Length;

/** Keeps the extremes of a transit while all pairs of stretches are looked at. */
final class TransitSearch {
    private final Length travel;
    private Contact tightest;
    private Contact firstOverlap;
    private Contact lastOverlap;
    private Missing unknown;

    TransitSearch(Length travel) {
        this.travel = travel;
    }

    /** Looks at a stretch of a device in a stretch of a lumen in which nothing else lies. */
    void look(Stretch lumen, Stretch device) {
        if (!meet(lumen, device)) {
            return;
        }
        if (lumen.diameter().isEmpty() || device.diameter().isEmpty()) {
            missing(new Missing(lumen, device, List.of(), meeting(lumen, device)));
        } else if (mayMatter(lumen.diameter().get(), device.diameter().get().widest())) {
            look(new ContactRegion(lumen, device, travel));
        }
    }

    /** Looks at a stretch of a device in a place in which others may lie. */
    void look(Place place, Stretch device, Packings packings) {
        if (place.beside().isEmpty()) {
            look(place.bore(), device);
        } else if (meet(place.bore(), device)) {
            lookBeside(place, device, packings);
        }
    }

    private void lookBeside(Place place, Stretch device, Packings packings) {
        Optional<Taper> lumen = place.bore().diameter();
        boolean isKnown = lumen.isPresent() && device.diameter().isPresent() && !place.hasUnknown();
        if (!isKnown) {
            missing(new Missing(place.bore(), device, place.beside(), meeting(place.bore(), device)));
        }
        Place known = place.known();
        if (lumen.isPresent() && mayMatter(lumen.get(), new Across(known, device).lengthInLine())) {
            look(new SharedRegion(known, device, travel, packings), isKnown);
        }
        overlapsAlone(place.bore(), device);
    }

    private void look(SharedRegion region, boolean isKnown) {
        Optional<Length> least = Optional.ofNullable(tightest).map(c -> c.clearance().worst());
        if (isKnown && least.map(region::mayLeaveLessThan).orElse(true)) {
            region.tightest(least).ifPresent(this::tighter);
        }
        if (region.mayLeaveLessThan(Length.ZERO)) {
            region.overlaps(this::isBeyondKnown, this::overlap);
        }
    }

    /** What does not even fit alone does not fit beside others: whatever is known of them hides no block. */
    private void overlapsAlone(Stretch lumen, Stretch device) {
        if (lumen.diameter().isPresent() && device.diameter().isPresent()
                && lumen.diameter().get().narrowest().compareTo(device.diameter().get().widest()) < 0) {
            ContactRegion alone = new ContactRegion(lumen, device, travel);
            overlaps(alone, alone.tightest(Lane.WORST));
        }
    }

    private boolean meet(Stretch lumen, Stretch device) {
        return meeting(lumen, device).compareTo(travel) < 0;
    }

    private static Length meeting(Stretch lumen, Stretch device) {
        return lumen.from().plus(device.from());
    }

    /** Whether something can leave less than what is known so far, where the lumen is narrowest. */
    private boolean mayMatter(Taper lumen, Length atMost) {
        Length least = lumen.narrowest().minus(atMost);
        return tightest == null || least.isNegative() || least.compareTo(tightest.clearance().worst()) < 0;
    }

    private void look(ContactRegion region) {
        Contact worst = region.tightest(Lane.WORST);
        tighter(worst);
        overlaps(region, worst);
    }

    private void tighter(Contact worst) {
        if (tightest == null || worst.clearance().worst().compareTo(tightest.clearance().worst()) < 0) {
            tightest = worst;
        }
    }

    private void overlaps(ContactRegion region, Contact worst) {
        if (worst.clearance().worst().isNegative() && worst.isProved()) {
            region.overlaps(decidingLane(worst), this::overlap);
        }
    }

    /** Where a centre is only assumed, a part blocks only when even its best lane overlaps. */
    private static Lane decidingLane(Contact contact) {
        boolean assumed = contact.lumen().diameter().orElseThrow().centreAssumed()
                || contact.device().diameter().orElseThrow().centreAssumed();
        return assumed ? Lane.BEST : Lane.NOMINAL;
    }

    /** Whether an overlap after that travel is before the first or behind the last one that is known. */
    private boolean isBeyondKnown(Length travel) {
        return firstOverlap == null || travel.compareTo(firstOverlap.travel()) < 0
                || travel.compareTo(lastOverlap.travel()) > 0;
    }

    private void overlap(Contact contact) {
        firstOverlap = earlier(firstOverlap, contact);
        if (lastOverlap == null || contact.travel().compareTo(lastOverlap.travel()) > 0) {
            lastOverlap = contact;
        }
    }

    private void missing(Missing meeting) {
        if (unknown == null || meeting.travel().compareTo(unknown.travel()) < 0) {
            unknown = meeting;
        }
    }

    private static Contact earlier(Contact known, Contact other) {
        return known == null || other.travel().compareTo(known.travel()) < 0 ? other : known;
    }

    Transit found() {
        return new Transit(Optional.ofNullable(tightest), Optional.ofNullable(firstOverlap),
                Optional.ofNullable(lastOverlap), Optional.ofNullable(unknown));
    }
}
