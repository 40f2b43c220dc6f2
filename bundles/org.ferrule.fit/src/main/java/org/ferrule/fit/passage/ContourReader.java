/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.figure.ReadFigure;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Dimension;

/** Reads the room that one section of a shaft needs, before or after use, alone or with a wire beside it. */
final class ContourReader {
    private final Device device;
    private final RuleSet rules;
    private final FigureReader reader;

    ContourReader(Device device, RuleSet rules, FigureReader reader) {
        this.device = device;
        this.rules = rules;
        this.reader = reader;
    }

    /**
     * Reads a section.
     *
     * @param phase before use going in, after use coming out
     * @param wire the wire beside it, if one lies there
     */
    Stretch read(ShaftSection section, Phase phase, Optional<Figure> wire) {
        Contour distal = section.distal(phase);
        Contour proximal = section.proximal(phase);
        Optional<Reason> why = whyUnknown(section, distal).or(() -> whyUnknown(section, proximal));
        if (why.isPresent()) {
            return Stretch.unknown(section.name(), section.from(), section.to(), why.get(), section.source());
        }
        Optional<AfterUseRule> growth = growth(section, phase);
        Outline start = outline(section, distal, growth);
        Outline end = distal.equals(proximal) ? start : outline(section, proximal, growth);
        List<Reason> notes = growth.map(rule -> List.of(grown(section, start, rule)))
                .orElseGet(() -> assumptions(section, start, end));
        return stretch(section, start, end, wire, notes);
    }

    /** An outline with its figures, as printed and in the phase that is asked about. */
    private record Outline(Profile profile, List<ReadFigure> printed) {
        Room room(Optional<Figure> wire) {
            return Room.of(profile, wire);
        }
    }

    private Optional<Reason> whyUnknown(ShaftSection section, Contour contour) {
        return dimensions(contour).stream()
                .flatMap(p -> MissingFigures.firstOf(device, classOf(section), section.name(), p).stream())
                .findFirst();
    }

    private static List<Optional<Dimension>> dimensions(Contour contour) {
        if (contour instanceof Contour.Round round) {
            return List.of(round.diameter());
        }
        if (contour instanceof Contour.Oval oval) {
            return List.of(Optional.of(oval.width()), Optional.of(oval.height()));
        }
        return ((Contour.Bundle) contour).members().stream().map(m -> Optional.of(m.diameter())).toList();
    }

    private Optional<AfterUseRule> growth(ShaftSection section, Phase phase) {
        boolean grows = phase == Phase.OUT && section.afterUse() == AfterUse.GROWS;
        return grows ? Optional.of(rules.growth(device.kind())) : Optional.empty();
    }

    private Outline outline(ShaftSection section, Contour contour, Optional<AfterUseRule> growth) {
        List<ReadFigure> printed = dimensions(contour).stream()
                .map(p -> reader.read(p.orElseThrow(), classOf(section), device.kind())).toList();
        List<Figure> figures = printed.stream().map(ReadFigure::figure)
                .map(f -> growth.map(rule -> Growth.of(f, rule)).orElse(f)).toList();
        return new Outline(new Profile(contour, figures), printed);
    }

    private FigureClass classOf(ShaftSection section) {
        return section.crossingProfile() ? FigureClass.CROSSING_PROFILE : OutlineReader.figureOf(device);
    }

    private static Reason grown(ShaftSection section, Outline outline, AfterUseRule rule) {
        Figure alone = outline.room(Optional.empty()).needed();
        return Reason.of(ReasonCode.AFTER_USE_ASSUMED, Reason.name(section.name()), Reason.diameter(alone.low()),
                Reason.diameter(alone.centre()), Reason.diameter(alone.high()), Reason.source(rule.source()));
    }

    private List<Reason> assumptions(ShaftSection section, Outline start, Outline end) {
        return Assumptions.of(device, section.name(),
                Stream.concat(start.printed().stream(), end.printed().stream()).toList());
    }

    private static Stretch stretch(ShaftSection section, Outline start, Outline end, Optional<Figure> wire,
            List<Reason> notes) {
        Room distal = start.room(wire);
        Room proximal = start == end ? distal : end.room(wire);
        boolean proved = distal.proved() && proximal.proved() && (start == end || areRound(start, end));
        return new Stretch(section.name(), section.from(), section.to(), Optional.of(taper(section, distal, proximal)),
                proved, notes, section.source(), Optional.of(shape(section, start.profile(), end.profile(), wire)));
    }

    /** A section that runs from one form into another one counts as round where others lie beside it. */
    private static Shape shape(ShaftSection section, Profile distal, Profile proximal, Optional<Figure> wire) {
        if (!distal.isLike(proximal)) {
            return shape(section, Profile.disc(Room.of(distal, Optional.empty()).needed()),
                    Profile.disc(Room.of(proximal, Optional.empty()).needed()), wire, false);
        }
        return shape(section, distal, proximal, wire, true);
    }

    private static Shape shape(ShaftSection section, Profile distal, Profile proximal, Optional<Figure> wire,
            boolean proved) {
        boolean hasLength = section.to().compareTo(section.from()) > 0;
        Profile widest = hasLength ? distal : distal.with(proximal, Figure::max);
        return new Shape(section.from(), section.to(), widest, hasLength ? proximal : widest, wire, proved);
    }

    /**
     * Only the room of round outlines runs linearly from one end to the other. That of others runs below the straight
     * line, since it is convex in their measures; so the line errs on the safe side and proves no overlap.
     */
    private static boolean areRound(Outline start, Outline end) {
        return start.profile().isRound() && end.profile().isRound();
    }

    private static Taper taper(ShaftSection section, Room distal, Room proximal) {
        boolean hasLength = section.to().compareTo(section.from()) > 0;
        return hasLength ? new Taper(distal.needed(), proximal.needed())
                : Taper.constant(distal.needed().max(proximal.needed()));
    }
}
