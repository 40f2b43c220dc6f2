/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.evidence.SharedSection.Part;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;

/**
 * The way of a device that does not pass alone: the lumen from its proximal entry, from the collar to the tip of an
 * extension in place that one's lumen, and all along whatever lies there.
 */
final class Way {
    private final FitQuestion question;
    private final Phase phase;
    private final Length outerLength;

    private Way(FitQuestion question, Phase phase) {
        this.question = question;
        this.phase = phase;
        this.outerLength = question.lumen().length();
    }

    /** The places of the way, from its proximal entry. */
    static List<Place> of(FitQuestion question, Phase phase) {
        return new Way(question, phase).places();
    }

    /** The lumen along the way, whatever lies in it. */
    static List<Stretch> bore(FitQuestion question) {
        List<Stretch> outer = question.outer().bore(question.lumen());
        Way way = new Way(question, Phase.IN);
        return question.conditions().through().filter(t -> !question.hidesWhereOthersLie())
                .map(t -> way.boreThrough(t, outer)).orElse(outer);
    }

    private List<Stretch> boreThrough(Through through, List<Stretch> outer) {
        Length collar = through.collarAt(outerLength);
        return Stream.of(part(outer, Length.ZERO, collar), inside(through, collar),
                part(outer, through.opensAt(outerLength), outerLength)).flatMap(List::stream).toList();
    }

    private List<Place> places() {
        List<Stretch> outer = question.outer().bore(question.lumen());
        Optional<Through> through = question.conditions().through();
        if (question.hidesWhereOthersLie()) {
            return outer.stream().map(bore -> new Place(bore, List.of())).toList();
        }
        List<List<Neighbour>> occupants = question.conditions().inside().stream().map(this::occupant).toList();
        return through.map(t -> throughExtension(t, outer, occupants)).orElseGet(() -> cut(outer, occupants));
    }

    private static List<Place> cut(List<Stretch> bores, List<List<Neighbour>> devices) {
        return bores.stream().flatMap(bore -> Place.cut(bore, devices).stream()).toList();
    }

    private List<Place> throughExtension(Through through, List<Stretch> outer, List<List<Neighbour>> occupants) {
        Length collar = through.collarAt(outerLength);
        Length opening = through.opensAt(outerLength);
        List<List<Neighbour>> withRod = new ArrayList<>(occupants);
        withRod.add(neighbours(through.extension().device(), Part.PUSH_ROD, through.extension().shaft(phase),
                through.tipAt(outerLength)));
        List<Place> places = new ArrayList<>(cut(part(outer, Length.ZERO, collar), withRod));
        places.addAll(cut(inside(through, collar), occupants));
        places.addAll(cut(part(outer, opening, outerLength), withRod));
        return places;
    }

    private static List<Stretch> part(List<Stretch> bores, Length from, Length to) {
        return bores.stream().filter(s -> s.to().compareTo(from) > 0 && s.from().compareTo(to) < 0)
                .map(s -> s.between(s.from().max(from), s.to().min(to), RoundingMode.FLOOR)).toList();
    }

    /** The extension's lumen; a part of it that would lie outside the hub is not on the way, and nobody can tell. */
    private List<Stretch> inside(Through through, Length collar) {
        Device extension = through.extension().device();
        List<Stretch> tube = new ArrayList<>();
        if (collar.isNegative()) {
            Reason why = Reason.of(ReasonCode.COLLAR_OUTSIDE, Reason.name(extension.id()),
                    Reason.distance(collar.negated()));
            tube.add(Stretch.unknown("", Length.ZERO, through.opensAt(outerLength), why, SourceRef.NONE));
        }
        for (Stretch bore : through.extension().bore(through.lumen())) {
            tube.add(bore.movedBy(collar, through.nameOf(bore.name())));
        }
        return part(tube, Length.ZERO, through.opensAt(outerLength));
    }

    private List<Neighbour> occupant(Occupant occupant) {
        ReadDevice read = occupant.device();
        Part part = read.device().kind() == DeviceKind.GUIDEWIRE ? Part.WIRE : Part.SHAFT;
        return neighbours(read.device(), part, read.outline(occupant.used() ? Phase.OUT : phase),
                outerLength.plus(occupant.tipAhead()));
    }

    /** Proximal to what is described of it nobody knows how thick it is. */
    private static List<Neighbour> neighbours(Device device, Part part, List<Stretch> outline, Length tipAt) {
        Length end = outline.stream().map(Stretch::to).reduce(Length.ZERO, Length::max);
        Stream<Stretch> beyond = end.compareTo(tipAt) < 0
                ? Stream.of(OutlineReader.uncovered(device, end, tipAt)) : Stream.empty();
        return Stream.concat(outline.stream(), beyond).map(s -> new Neighbour(device, part, s, tipAt)).toList();
    }
}
