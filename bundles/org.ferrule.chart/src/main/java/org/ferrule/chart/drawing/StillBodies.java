/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.Through;
import org.ferrule.quantity.Length;

/**
 * What lies still in the lumen of a pair, along its drawing: the devices beside the one that passes, and the extension
 * that it passes through, whose tube replaces the lumen from its collar to its tip. Nothing where nobody can tell where
 * it lies, because a length is not stated.
 */
final class StillBodies {
    private final FitQuestion question;
    private final Phase phase;
    private final ReasonWords words;
    private final double end;

    StillBodies(FitQuestion question, Phase phase, ReasonWords words) {
        this.question = question;
        this.phase = phase;
        this.words = words;
        this.end = question.lumen().length().mm();
    }

    /** What lies beside the device that passes: the devices there, and the push rod proximal to the tube. */
    List<StillBody> beside() {
        if (end == 0) {
            return List.of();
        }
        List<StillBody> bodies = new ArrayList<>();
        question.conditions().inside().forEach(occupant -> bodies.add(occupant(occupant)));
        through().ifPresent(t -> bodies.add(new StillBody("rod:" + t.extension().device().id(),
                words.phrases().get("drawing.rod"), extension(t), tip(t)).cut(Double.NEGATIVE_INFINITY, collar(t))));
        return bodies.stream().filter(body -> !body.bands().isEmpty()).toList();
    }

    private StillBody occupant(Occupant occupant) {
        Device device = occupant.device().device();
        double tip = end + occupant.tipAhead().mm();
        return new StillBody("occupant:" + device.id(), name(device),
                Band.ofShaft(occupant.device(), question.rules(), occupant.used() ? Phase.OUT : phase, tip), tip);
    }

    /** The tube of the extension that is passed. */
    Optional<StillBody> tube() {
        return through().map(t -> new StillBody("tube:" + t.extension().device().id(), name(t.extension().device()),
                extension(t), tip(t)).cut(collar(t), tip(t)));
    }

    /** The lumen within the tube. */
    List<Band> tubeBore() {
        return through().stream().flatMap(t -> Band.ofBore(t.extension().bore(t.lumen())).stream()
                .map(b -> new Band(t.nameOf(b.name()), b.from() + collar(t), b.to() + collar(t), b.diameter(), false)))
                .filter(b -> b.overlaps(0, Double.POSITIVE_INFINITY)).map(b -> b.cut(0, b.to())).toList();
    }

    /** Where a tube begins. */
    Optional<Double> collar() {
        return through().map(this::collar).filter(place -> place > 0);
    }

    private Optional<Through> through() {
        return question.conditions().through().filter(t -> end > 0 && !t.lumen().length().equals(Length.ZERO));
    }

    private List<Band> extension(Through through) {
        return Band.ofShaft(through.extension(), question.rules(), phase, tip(through));
    }

    private double tip(Through through) {
        return end + through.protrusion().mm();
    }

    private double collar(Through through) {
        return through.collarAt(question.lumen().length()).mm();
    }

    /** The places that a drawing should show. */
    Stream<Double> stations() {
        return Stream.of(beside().stream().filter(body -> body.id().startsWith("occupant")).map(StillBody::tip),
                tube().stream().map(StillBody::tip), collar().stream()).flatMap(s -> s);
    }

    private static String name(Device device) {
        return device.name().isEmpty() ? device.id() : device.name();
    }
}
