/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Transit.Missing;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Lane;
import org.ferrule.quantity.Length;

/**
 * Where a device that passes alone first meets the wall, by the same geometry that gives the verdict: claims and bench
 * results are not heard.
 *
 * @param stop where it is proved that it cannot go on: nominal clearance below zero, or best clearance where the label
 *             leaves a centre to be assumed; the place at which the solver's geometry says "blocked"
 * @param worst the first place at which the clearance of the largest part in the smallest lumen is below zero
 * @param unknown the first meeting for which a figure is missing: beyond it the two others may not be the first ones
 */
public record FirstContacts(Optional<Meeting> stop, Optional<Meeting> worst, Optional<Missing> unknown) {

    /**
     * A contact.
     *
     * @param at in stations that people use
     * @param clearance there
     * @param travel how far the leading end has come, from the end of the lumen that is entered
     */
    public record Meeting(Limiting at, Clearance clearance, Length travel) {
    }

    public FirstContacts {
        Objects.requireNonNull(stop, "stop");
        Objects.requireNonNull(worst, "worst");
        Objects.requireNonNull(unknown, "unknown");
    }

    /**
     * The first contacts on the way in.
     *
     * @param question about a device that passes alone
     * @throws IllegalArgumentException when the conditions name something else in the lumen
     */
    public static FirstContacts of(FitQuestion question) {
        if (!question.conditions().alone()) {
            throw new IllegalArgumentException("first contacts are told of a device that passes alone, but \""
                    + question.inner().device().id() + "\" passes with others in the lumen");
        }
        Route route = Route.of(question, Phase.IN);
        Transit transit = route.transit(new Packings());
        return new FirstContacts(transit.firstOverlap().map(c -> meeting(route, c)),
                route.firstOverlap(Lane.WORST).map(c -> meeting(route, c)), transit.unknown());
    }

    private static Meeting meeting(Route route, Contact contact) {
        return new Meeting(route.limiting(contact), contact.clearance(), contact.travel());
    }
}
