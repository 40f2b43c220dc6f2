/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.engineering.change.LimitingPlaces;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.evidence.SharedSection.Member;
import org.ferrule.fit.evidence.SharedSection.Part;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Finds in whose papers the figures stand of what lies side by side at a limiting place. */
final class Givers {
    private final FitQuestion question;
    private final Limiting limiting;
    private final FigureReader reader;
    private final List<Occupant> waiting;
    private final Map<Place, Giver> found = new LinkedHashMap<>();

    private Givers(FitQuestion question, Limiting limiting) {
        this.question = question;
        this.limiting = limiting;
        this.reader = new FigureReader(question.rules());
        this.waiting = new ArrayList<>(question.conditions().inside());
    }

    /** The lumen and all that lies there; nothing where an outline is not round, or is not found in any papers. */
    static List<Giver> of(FitQuestion question, Limiting limiting, SharedSection section) {
        Givers givers = new Givers(question, limiting);
        Optional<Place.Bore> bore = LimitingPlaces.bore(question, limiting);
        boolean round = section.members().stream().map(Member::body).distinct().count() == section.members().size();
        return bore.isPresent() && round && givers.addAll(bore.get(), section.members())
                ? List.copyOf(givers.found.values()) : List.of();
    }

    private boolean addAll(Place.Bore bore, List<Member> members) {
        Figure lumen = limiting.lumenDiameter();
        found.put(bore, new Giver(bore, isAssumed(bore, FigureClass.INNER_DIAMETER, bore.device().kind()),
                lumen.centre().minus(lumen.low()), List.of()));
        Optional<Occupant> last = Optional.empty();
        for (int i = 0; i < members.size(); i++) {
            Member member = members.get(i);
            if (!member.moving() && member.part() != Part.PUSH_ROD && !isWireBeside(member)) {
                last = next(member.device());
            }
            Optional<Place> place = place(member, last);
            if (place.isEmpty()) {
                return false;
            }
            if (!hasGrown(place.get(), last.filter(o -> !member.moving()))) {
                add(place.get(), member.figure(), i);
            }
        }
        return true;
    }

    /** Those that lie there come in the order in which the conditions name them. */
    private Optional<Occupant> next(String device) {
        Optional<Occupant> next = waiting.stream().filter(o -> o.device().device().id().equals(device)).findFirst();
        next.ifPresent(waiting::remove);
        return next;
    }

    private static boolean isWireBeside(Member member) {
        return member.part() == Part.WIRE && member.section().isEmpty();
    }

    private Optional<Place> place(Member member, Optional<Occupant> occupant) {
        if (member.part() == Part.PUSH_ROD) {
            return question.conditions().through().flatMap(t -> shaft(t.extension().device(), member, t.protrusion()));
        }
        Optional<Device> device = member.moving() ? Optional.of(question.inner().device())
                : occupant.map(o -> o.device().device());
        if (isWireBeside(member)) {
            return device.map(Place.Wire::new);
        }
        return member.moving() ? LimitingPlaces.shaft(question, limiting).map(Place.class::cast)
                : device.flatMap(d -> shaft(d, member, occupant.orElseThrow().tipAhead()));
    }

    private Optional<Place> shaft(Device device, Member member, Length tipAhead) {
        Length station = question.lumen().length().plus(tipAhead).minus(limiting.lumenStation());
        return LimitingPlaces.shaft(device, member.section(), station).map(Place.class::cast);
    }

    /** What grows with use is not printed as it is then. */
    private static boolean hasGrown(Place place, Optional<Occupant> occupant) {
        return occupant.filter(Occupant::used).isPresent() && place instanceof Place.Shaft shaft
                && shaft.section().afterUse() != AfterUse.UNCHANGED;
    }

    private void add(Place place, Figure figure, int member) {
        Length spread = figure.high().minus(figure.centre());
        found.merge(place, new Giver(place, isAssumed(place), spread, List.of(member)), (a, b) -> {
            List<Integer> members = new ArrayList<>(a.members());
            members.addAll(b.members());
            return new Giver(place, a.assumed() || b.assumed(), a.spread().max(b.spread()), members);
        });
    }

    private boolean isAssumed(Place place) {
        return place instanceof Place.Shaft shaft ? isAssumed(shaft, shaft.figureClass(), shaft.device().kind())
                : isAssumed(place, FigureClass.WIRE_DIAMETER, DeviceKind.GUIDEWIRE);
    }

    private boolean isAssumed(Place place, FigureClass figures, DeviceKind kind) {
        return place.printed().stream().filter(Dimension::readable)
                .anyMatch(d -> reader.read(d, figures, kind).assumedFrom().isPresent());
    }
}
