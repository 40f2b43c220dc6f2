/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;

/**
 * Reads the outline of a device along its shaft, from the distal tip: proximal to an exit port the device's own wire
 * lies beside the shaft, and stretches that no section covers are unknown.
 */
final class OutlineReader {
    private final Device device;
    private final RuleSet rules;
    private final ContourReader contours;
    private final OwnWire wire;
    private final Optional<Length> exitPort;

    OutlineReader(Device device, RuleSet rules, FigureReader reader, OwnWire wire) {
        this.device = device;
        this.rules = rules;
        this.contours = new ContourReader(device, reader);
        this.wire = wire;
        this.exitPort = device.wireLumen().filter(Lumen::leavesShaft).map(Lumen::proximalAt);
    }

    /** The class of figures that the outer diameter of a device's shaft belongs to. */
    static FigureClass figureOf(Device device) {
        return device.kind() == DeviceKind.GUIDEWIRE ? FigureClass.WIRE_DIAMETER : FigureClass.OUTER_DIAMETER;
    }

    /** The outline in that phase. */
    List<Stretch> read(Phase phase) {
        List<Stretch> stretches = new ArrayList<>();
        Length covered = Length.ZERO;
        for (ShaftSection section : inOrder()) {
            if (section.from().compareTo(covered) > 0) {
                stretches.add(uncovered(covered, section.from()));
            }
            addSection(stretches, section, phase);
            covered = covered.max(section.to());
        }
        Length end = device.insertableLength().orElse(covered);
        if (covered.compareTo(end) < 0) {
            stretches.add(uncovered(covered, end));
        }
        return List.copyOf(stretches);
    }

    private List<ShaftSection> inOrder() {
        return device.sections().stream().sorted(Comparator.comparing(ShaftSection::from)).toList();
    }

    private Stretch uncovered(Length from, Length to) {
        Reason why = Reason.of(ReasonCode.UNCOVERED_STRETCH, Reason.name(device.id()), Reason.distance(from),
                Reason.distance(to));
        return Stretch.unknown("", from, to, why, SourceRef.NONE);
    }

    private void addSection(List<Stretch> stretches, ShaftSection section, Phase phase) {
        Length port = exitPort.orElse(section.to());
        if (port.compareTo(section.to()) >= 0) {
            stretches.add(alone(section, phase));
        } else if (port.compareTo(section.from()) <= 0) {
            stretches.add(besideWire(section, phase));
        } else {
            stretches.add(alone(section, phase).between(section.from(), port, RoundingMode.CEILING));
            stretches.add(besideWire(section, phase).between(port, section.to(), RoundingMode.CEILING));
        }
    }

    private Stretch alone(ShaftSection section, Phase phase) {
        Stretch read = read(section, phase, Optional.empty());
        return phase == Phase.OUT && section.afterUse() == AfterUse.GROWS ? grown(read) : read;
    }

    private Stretch read(ShaftSection section, Phase phase, Optional<Figure> beside) {
        boolean after = phase == Phase.OUT;
        return contours.read(section, after ? section.distalAfter() : section.distal(),
                after ? section.proximalAfter() : section.proximal(), beside);
    }

    private Stretch grown(Stretch folded) {
        if (folded.diameter().isEmpty()) {
            return folded;
        }
        AfterUseRule rule = rules.growth(device.kind());
        Taper grown = Growth.of(folded.diameter().get(), rule);
        Reason note = Reason.of(ReasonCode.AFTER_USE_ASSUMED, Reason.name(folded.name()),
                Reason.diameter(grown.start().low()), Reason.diameter(grown.start().centre()),
                Reason.diameter(grown.start().high()), Reason.source(rule.source()));
        return new Stretch(folded.name(), folded.from(), folded.to(), Optional.of(grown), folded.proved(),
                List.of(note), folded.source());
    }

    private Stretch besideWire(ShaftSection section, Phase phase) {
        if (wire.diameter().isEmpty()) {
            Reason why = Reason.of(ReasonCode.OWN_WIRE_NOT_STATED, Reason.name(device.id()));
            return Stretch.unknown(section.name(), section.from(), section.to(), why, section.source());
        }
        Stretch both = read(section, phase, wire.diameter());
        return both.diameter().isEmpty() ? both
                : both.noting(Reason.of(ReasonCode.OWN_WIRE_BESIDE, Reason.name(device.id()),
                        Reason.diameter(wire.diameter().get().centre())));
    }
}
