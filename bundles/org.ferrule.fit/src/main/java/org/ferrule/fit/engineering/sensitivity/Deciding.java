/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.sensitivity;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.engineering.change.LimitingPlaces;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.Reason.NameArgument;
import org.ferrule.fit.verdict.Reason.SourceArgument;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;

/** Counts, cell by cell, which places of the papers decide. */
final class Deciding {
    private static final List<ReasonCode> CLAIMS = List.of(ReasonCode.CLAIM_SAYS_YES, ReasonCode.CLAIM_SAYS_NO,
            ReasonCode.CLAIM_NAMES_PARTNER, ReasonCode.CLAIM_EXCLUDES_PARTNER);
    private static final List<ReasonCode> MISSING = List.of(ReasonCode.MISSING_FIGURE, ReasonCode.UNREADABLE_FIGURE);

    private final Optional<Device> wire;
    private final Map<Place, Integer> counts = new HashMap<>();

    /**
     * Counts.
     *
     * @param wire the wire that all inner devices run over; absent where each runs over the one it is stated to take
     */
    Deciding(Optional<Device> wire) {
        this.wire = wire;
    }

    /** How many cells each place decides; places that decide none are left out. */
    Map<Place, Integer> counts() {
        return counts;
    }

    void count(FitQuestion question, PhaseAnswer answer) {
        Set<Place> places = new LinkedHashSet<>();
        if (answer.authority() == Authority.CLAIM) {
            addClaims(places, question, answer);
        } else if (answer.authority() == Authority.GEOMETRY && answer.verdict() == answer.geometry()) {
            addLimiting(places, question, answer);
        }
        places.forEach(place -> counts.merge(place, 1, Integer::sum));
    }

    private void addLimiting(Set<Place> places, FitQuestion question, PhaseAnswer answer) {
        answer.limiting().flatMap(l -> LimitingPlaces.shaft(question, l)).ifPresent(places::add);
        answer.limiting().flatMap(l -> LimitingPlaces.bore(question, l)).ifPresent(places::add);
        if (answer.limiting().isPresent()) {
            LimitingPlaces.wire(question, answer).ifPresent(own -> places.add(wire.flatMap(Places::thickest)
                    .orElse(own)));
        }
        if (answer.verdict() == Verdict.UNKNOWN) {
            answer.reasons().stream().filter(r -> MISSING.contains(r.code()))
                    .forEach(reason -> addMissing(places, question, reason));
        }
    }

    /** The sections of that name, by the reason's device id and place. */
    private static void addMissing(Set<Place> places, FitQuestion question, Reason reason) {
        String where = name(reason, 2);
        devices(question, name(reason, 0)).flatMap(device -> Places.ofSections(device).stream())
                .filter(place -> place.name().equals(where) && place.isIncomplete()).forEach(places::add);
    }

    private static void addClaims(Set<Place> places, FitQuestion question, PhaseAnswer answer) {
        for (Reason reason : answer.reasons()) {
            if (CLAIMS.contains(reason.code())) {
                SourceArgument source = (SourceArgument) reason.arguments().get(reason.arguments().size() - 1);
                devices(question, name(reason, 0)).forEach(d -> addStatements(places, d, reason, source.value(),
                        question.inner().device().kind() == DeviceKind.GUIDEWIRE));
            }
        }
    }

    private static void addStatements(Set<Place> places, Device device, Reason reason, SourceRef source,
            boolean aboutWire) {
        boolean named = reason.code() == ReasonCode.CLAIM_NAMES_PARTNER
                || reason.code() == ReasonCode.CLAIM_EXCLUDES_PARTNER;
        device.claims().stream().filter(c -> c.source().equals(source))
                .filter(c -> named ? isNamed(c, reason) : c.value().filter(v -> v.text().equals(name(reason, 2)))
                        .isPresent())
                .forEach(c -> places.add(new Place.Statement(device, Optional.of(c))));
        boolean takesWire = aboutWire && !named && source.equals(device.wireSource())
                && device.takesWire().filter(w -> w.text().equals(name(reason, 2))).isPresent();
        if (takesWire) {
            places.add(new Place.Statement(device, Optional.empty()));
        }
    }

    private static boolean isNamed(Claim claim, Reason reason) {
        return claim.type() == (reason.code() == ReasonCode.CLAIM_NAMES_PARTNER ? Claim.Type.COMPATIBLE
                : Claim.Type.NOT_COMPATIBLE);
    }

    private static Stream<Device> devices(FitQuestion question, String id) {
        return Stream.of(question.outer().device(), question.inner().device()).filter(d -> d.id().equals(id));
    }

    private static String name(Reason reason, int argument) {
        return ((NameArgument) reason.arguments().get(argument)).value();
    }
}
