/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.passage.Contact;
import org.ferrule.fit.passage.CrossSection;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.Neighbour;
import org.ferrule.fit.passage.Packings;
import org.ferrule.fit.passage.Route;
import org.ferrule.fit.passage.Transit;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/** The geometry of a passage: room at every station for every part that must pass it. */
public final class PassageCheck implements FitCheck {
    /** Only spares work: it never changes an answer. */
    private final Packings packings = new Packings();

    @Override
    public boolean yieldsToStatements() {
        return true;
    }

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        Route route = Route.of(question, phase);
        Transit transit = route.transit(packings);
        Optional<Contact> stop = phase == Phase.IN ? transit.firstOverlap() : transit.lastOverlap();
        if (stop.isPresent()) {
            return stopped(question, phase, route, stop.get());
        }
        if (transit.unknown().isPresent() || question.ofUnstatedLength().isPresent()) {
            return unknown(question, transit);
        }
        return transit.tightest().map(contact -> passed(question, route, contact))
                .orElseGet(() -> new Finding(Verdict.FITS, Optional.empty(), Optional.empty(),
                        Optional.of(route.reachAtEnd()), List.of()));
    }

    private Finding stopped(FitQuestion question, Phase phase, Route route, Contact stop) {
        Reason reason = phase == Phase.IN
                ? place(ReasonCode.STOPS_SHORT, route.travel().minus(stop.travel()), route.limiting(stop))
                : place(ReasonCode.CAUGHT_ON_WITHDRAWAL, route.reachAt(stop), route.limiting(stop));
        Length reach = phase == Phase.IN ? route.reachAt(stop) : route.reachAtEnd();
        return finding(Verdict.BLOCKED, question, route, stop, reach, List.of(reason));
    }

    private static Reason place(ReasonCode code, Length distance, Limiting limiting) {
        return Reason.of(code, Reason.distance(distance), Reason.name(limiting.deviceSection()),
                Reason.diameter(limiting.deviceDiameter().centre()), Reason.name(limiting.lumenSection()),
                Reason.diameter(limiting.lumenDiameter().centre()));
    }

    private static Finding unknown(FitQuestion question, Transit transit) {
        List<Reason> reasons = new ArrayList<>();
        transit.unknown().ifPresent(missing -> reasons.addAll(missing.why()));
        question.ofUnstatedLength().ifPresent(
                device -> reasons.add(Reason.of(ReasonCode.LENGTH_NOT_STATED, Reason.name(device.id()))));
        // the clearance of the parts that are known would read as if it were that of the whole
        return Finding.of(Verdict.UNKNOWN, reasons);
    }

    private Finding passed(FitQuestion question, Route route, Contact tightest) {
        Length required = question.requiredClearance();
        Length worst = tightest.clearance().worst();
        boolean enough = worst.compareTo(required) >= 0;
        List<Reason> reasons = new ArrayList<>();
        reasons.add(Reason.of(enough ? ReasonCode.ENOUGH_CLEARANCE : ReasonCode.LESS_THAN_REQUIRED,
                Reason.clearance(worst), Reason.clearance(required), Reason.name(tightest.device().name()),
                Reason.name(tightest.lumen().name())));
        if (tightest.clearance().nominal().isNegative() && !tightest.isProved()) {
            reasons.add(Reason.of(ReasonCode.NOT_PROVED, Reason.clearance(tightest.clearance().nominal())));
        }
        return finding(enough ? Verdict.FITS : Verdict.TIGHT, question, route, tightest, route.reachAtEnd(), reasons);
    }

    private Finding finding(Verdict verdict, FitQuestion question, Route route, Contact contact, Length reach,
            List<Reason> decisive) {
        Limiting limiting = route.limiting(contact);
        List<Reason> reasons = new ArrayList<>(decisive);
        contact.beside().forEach(neighbour -> reasons.add(beside(neighbour, contact)));
        reasons.addAll(contact.device().notes());
        reasons.addAll(contact.lumen().notes());
        contact.beside().forEach(neighbour -> reasons.addAll(neighbour.outline().notes()));
        route.reachCountsFrom().ifPresent(reasons::add);
        return new Finding(verdict, Optional.of(contact.clearance()), Optional.of(limiting), Optional.of(reach),
                reasons, evidence(question, contact, limiting));
    }

    private static Reason beside(Neighbour neighbour, Contact contact) {
        return Reason.of(ReasonCode.LIES_BESIDE, Reason.name(neighbour.device().id()),
                Reason.name(neighbour.outline().name()),
                Reason.diameter(neighbour.figureAt(contact.lumenStation()).centre()),
                Reason.diameter(contact.deviceFigure().centre()));
    }

    private List<Evidence> evidence(FitQuestion question, Contact contact, Limiting limiting) {
        return CrossSection.at(contact, limiting, question.inner().device(), packings).<List<Evidence>>map(List::of)
                .orElse(List.of());
    }
}
