/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.verdict.Lane;
import org.ferrule.fit.verdict.Reason;
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
     * Stretches that meet, of which at least one has no known diameter.
     *
     * @param lumen the stretch of the lumen
     * @param device the stretch of the device
     * @param beside what lies beside it there
     * @param travel how far the leading end has come when they meet
     */
    public record Missing(Stretch lumen, Stretch device, List<Neighbour> beside, Length travel) {

        /** Why figures are unknown. */
        public List<Reason> why() {
            return Stream.concat(Stream.of(lumen, device), beside.stream().map(Neighbour::outline))
                    .filter(s -> s.diameter().isEmpty()).flatMap(s -> s.notes().stream()).toList();
        }
    }

    /**
     * Computes a transit.
     *
     * @param lumen its stretches, counted from the end that is entered
     * @param device its stretches, counted from the end that leads
     * @param travel how far the leading end goes from the end that is entered
     */
    static Transit of(List<Stretch> lumen, List<Stretch> device, Length travel) {
        TransitSearch search = new TransitSearch(travel);
        for (Stretch in : device) {
            for (Stretch around : lumen) {
                search.look(around, in);
            }
        }
        return search.found();
    }

    /**
     * Computes a transit through a lumen in which others lie.
     *
     * @param way its places, counted from the proximal entry
     * @param packings what is known of parts that lie side by side
     */
    static Transit beside(List<Place> way, List<Stretch> device, Length travel, Packings packings) {
        TransitSearch search = new TransitSearch(travel);
        for (Stretch in : device) {
            for (Place around : way) {
                search.look(around, in, packings);
            }
        }
        return search.found();
    }

    /** The first contact, in stretches of known diameters, at which that lane's clearance is below zero. */
    static Optional<Contact> firstOverlap(List<Stretch> lumen, List<Stretch> device, Length travel, Lane lane) {
        List<Contact> overlaps = new ArrayList<>();
        for (Stretch in : device) {
            for (Stretch around : lumen) {
                boolean isKnown = in.diameter().isPresent() && around.diameter().isPresent();
                if (isKnown && around.from().plus(in.from()).compareTo(travel) < 0) {
                    new ContactRegion(around, in, travel).overlaps(lane, overlaps::add);
                }
            }
        }
        return overlaps.stream().min(Comparator.comparing(Contact::travel));
    }
}
