/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.verdict.Lane;
import org.ferrule.quantity.Length;

/**
 * What happens when a device travels through a lumen: every part of it that has passed a station of the lumen must have
 * found room there (the running largest profile).
 *
 * @param tightest the contact of least worst-case clearance; absent when no two known stretches meet
 * @param firstOverlap the first contact at which it is proved that it cannot go on, on the way in; absent when it goes
 *                     on
 * @param lastOverlap the farthest such contact: where it is caught first on the way back
 * @param unknown the first meeting for which a figure is missing
 */
public record Transit(Optional<Contact> tightest, Optional<Contact> firstOverlap, Optional<Contact> lastOverlap,
        Optional<Missing> unknown) {

    /**
     * Two stretches that meet, of which at least one has no known diameter.
     *
     * @param lumen the stretch of the lumen
     * @param device the stretch of the device
     * @param travel how far the leading end has come when they meet
     */
    public record Missing(Stretch lumen, Stretch device, Length travel) {
    }

    /**
     * Computes a transit.
     *
     * @param lumen its stretches, counted from the end that is entered
     * @param device its stretches, counted from the end that leads
     * @param travel how far the leading end goes from the end that is entered
     */
    public static Transit of(List<Stretch> lumen, List<Stretch> device, Length travel) {
        Search search = new Search();
        for (Stretch in : device) {
            for (Stretch around : lumen) {
                search.look(around, in, travel);
            }
        }
        return search.found();
    }

    /** Keeps the extremes while all pairs of stretches are looked at. */
    private static final class Search {
        private Contact tightest;
        private Contact firstOverlap;
        private Contact lastOverlap;
        private Missing unknown;

        void look(Stretch lumen, Stretch device, Length travel) {
            Length meeting = lumen.from().plus(device.from());
            if (meeting.compareTo(travel) >= 0) {
                return;
            }
            if (lumen.diameter().isEmpty() || device.diameter().isEmpty()) {
                missing(new Missing(lumen, device, meeting));
            } else if (mayMatter(lumen.diameter().get(), device.diameter().get())) {
                look(new ContactRegion(lumen, device, travel));
            }
        }

        /** Whether two stretches can leave less than what is known so far, at their narrowest and widest. */
        private boolean mayMatter(Taper lumen, Taper device) {
            Length least = lumen.narrowest().minus(device.widest());
            return tightest == null || least.isNegative() || least.compareTo(tightest.clearance().worst()) < 0;
        }

        private void look(ContactRegion region) {
            Contact worst = region.tightest(Lane.WORST);
            if (tightest == null || worst.clearance().worst().compareTo(tightest.clearance().worst()) < 0) {
                tightest = worst;
            }
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
}
