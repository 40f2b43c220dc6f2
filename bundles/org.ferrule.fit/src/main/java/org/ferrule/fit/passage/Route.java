/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.verdict.Lane;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;

/**
 * A question laid out for the solver: the lumen from the end that is entered, the moving device from the end that
 * leads, and how far it goes; and the way back from there to stations that people use.
 */
public final class Route {
    private final FitQuestion question;
    private final List<Stretch> lumen;
    private final List<Stretch> device;
    private final Length deviceLength;
    private final Length travel;
    private final Phase phase;

    private Route(FitQuestion question, Phase phase, List<Stretch> lumen, List<Stretch> device, Length deviceLength,
            Length travel) {
        this.question = question;
        this.phase = phase;
        this.lumen = lumen;
        this.device = device;
        this.deviceLength = deviceLength;
        this.travel = travel;
    }

    /** Lays out a question. Where a length is not stated, what surely enters still counts. */
    public static Route of(FitQuestion question, Phase phase) {
        List<Stretch> bore = question.outer().bore(question.lumen());
        boolean used = phase == Phase.OUT || question.conditions().afterInflation();
        List<Stretch> outline = question.inner().outline(used ? Phase.OUT : Phase.IN);
        Length boreLength = question.lumen().length();
        Length travel = question.leastTravel();
        Length deviceLength = question.inner().device().insertableLength().orElse(travel);
        if (outline.isEmpty()) {
            outline = List.of(notDescribed(question, travel));
        }
        if (question.direction() == Direction.OVER_WIRE_TAIL) {
            bore = Stretch.reversed(bore, boreLength);
            outline = Stretch.reversed(outline, deviceLength);
        }
        return new Route(question, phase, bore, outline, deviceLength, travel);
    }

    private static Stretch notDescribed(FitQuestion question, Length length) {
        return Stretch.unknown("", Length.ZERO, length,
                MissingFigures.missing(question.inner().device(), OutlineReader.figureOf(question.inner().device()),
                        ""),
                SourceRef.NONE);
    }

    /** How far the leading end is asked to go from the end of the lumen that it enters. */
    public Length travel() {
        return travel;
    }

    /**
     * What happens on the way.
     *
     * @param packings what is known of parts that lie side by side
     */
    public Transit transit(Packings packings) {
        return question.conditions().alone() ? Transit.of(lumen, device, travel)
                : Transit.beside(Way.of(question, phase), device, travel, packings);
    }

    /**
     * The first contact on the way at which a lane's clearance is below zero; stretches of unknown diameter are passed
     * over.
     *
     * @throws IllegalStateException when something else lies in the lumen
     */
    Optional<Contact> firstOverlap(Lane lane) {
        if (!question.conditions().alone()) {
            throw new IllegalStateException("first overlaps are told of a device that passes alone");
        }
        return Transit.firstOverlap(lumen, device, travel, lane);
    }

    /** How far the inner tip is beyond the outer tip when everything asked for has been done; see {@link #reachAt}. */
    public Length reachAtEnd() {
        return reachAfter(travel);
    }

    /**
     * Tip first: how far the inner tip is beyond the outer tip at that contact, negative when it is still inside. Over
     * a wire: how much wire is left beyond the outer tip.
     */
    public Length reachAt(Contact contact) {
        return reachAfter(contact.travel());
    }

    /** From which tip the reach counts, where it is not that of the outer device. */
    public Optional<Reason> reachCountsFrom() {
        return question.conditions().through().filter(t -> t.protrusion().compareTo(question.lumen().distalAt()) > 0)
                .map(t -> Reason.of(ReasonCode.REACH_FROM_EXTENSION, Reason.name(t.extension().device().id()),
                        Reason.distance(t.protrusion().minus(question.lumen().distalAt()))));
    }

    private Length reachAfter(Length travelled) {
        if (question.direction() == Direction.OVER_WIRE_TAIL) {
            return deviceLength.minus(travelled).minus(question.lumen().distalAt());
        }
        return travelled.minus(question.lumen().length()).minus(question.outerTipAhead());
    }

    /** A contact in stations that people use: in the lumen from its proximal entry, on the device from its tip. */
    public Limiting limiting(Contact contact) {
        boolean reversed = question.direction() == Direction.OVER_WIRE_TAIL;
        Length lumenStation = reversed ? question.lumen().length().minus(contact.lumenStation())
                : contact.lumenStation();
        Length deviceStation = reversed ? deviceLength.minus(contact.deviceStation()) : contact.deviceStation();
        return new Limiting(contact.lumen().name(), lumenStation, contact.lumenFigure(), contact.lumen().source(),
                contact.device().name(), deviceStation, contact.deviceFigure(), contact.device().source());
    }
}
