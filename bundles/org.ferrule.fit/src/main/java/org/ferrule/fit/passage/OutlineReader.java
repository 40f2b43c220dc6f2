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

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;

/**
 * Reads the outline of a device along its shaft, from the distal tip: proximal to an exit port the device's own wire
 * lies beside the shaft, stretches that no section covers are unknown, and what lies beyond the stated length is left
 * out. Sections may overlap; then the largest counts.
 */
final class OutlineReader {
    private final Device device;
    private final ContourReader contours;
    private final OwnWire wire;
    private final Optional<Length> exitPort;
    private final boolean portUnknown;

    /** Reads a device that runs over that wire. */
    OutlineReader(Device device, RuleSet rules, FigureReader reader, OwnWire wire) {
        this(device, rules, reader, wire, exitPort(device));
    }

    private OutlineReader(Device device, RuleSet rules, FigureReader reader, OwnWire wire,
            Optional<Length> exitPort) {
        this.device = device;
        this.contours = new ContourReader(device, rules, reader);
        this.wire = wire;
        this.exitPort = exitPort;
        this.portUnknown = exitPort.isPresent() && device.lumens().stream()
                .anyMatch(l -> l.use() == Lumen.Use.WIRE && l.portUnknown());
    }

    /** Reads the shaft of a device, without the wire that may lie beside it. */
    static OutlineReader ofShaft(Device device, RuleSet rules, FigureReader reader) {
        return new OutlineReader(device, rules, reader, OwnWire.NOT_STATED, Optional.empty());
    }

    /** Whether its wire lies beside the shaft anywhere. */
    boolean hasExitPort() {
        return exitPort.isPresent();
    }

    /** The most distal side port of its wire lumens; without any wire lumen the collar of its tube. */
    private static Optional<Length> exitPort(Device device) {
        return device.lumens().stream().filter(l -> l.use() == Lumen.Use.WIRE && l.leavesShaft())
                .map(Lumen::proximalAt).min(Length::compareTo)
                .or(() -> device.wireLumen().filter(Lumen::leavesShaft).map(Lumen::proximalAt));
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
                stretches.add(uncovered(device, covered, section.from()));
            }
            addSection(stretches, section, phase);
            covered = covered.max(section.to());
        }
        Length end = device.statedLength().orElse(covered);
        if (covered.compareTo(end) < 0) {
            stretches.add(uncovered(device, covered, end));
        }
        return Stretch.upTo(end, stretches, RoundingMode.CEILING);
    }

    /**
     * Each section that cannot bend, alone and without a wire beside it, from the distal tip. Only of a round one the
     * diameter is proved to be what a bend has to take.
     */
    List<Stretch> rigid(Phase phase) {
        List<Stretch> stretches = inOrder().stream().filter(ShaftSection::rigid)
                .map(section -> rigid(section, phase)).toList();
        return device.statedLength().map(end -> Stretch.upTo(end, stretches, RoundingMode.CEILING)).orElse(stretches);
    }

    private Stretch rigid(ShaftSection section, Phase phase) {
        Stretch alone = contours.read(section, phase, Optional.empty());
        boolean round = section.distal(phase) instanceof Contour.Round
                && section.proximal(phase) instanceof Contour.Round;
        return round ? alone : alone.notProved();
    }

    private List<ShaftSection> inOrder() {
        return device.sections().stream().sorted(Comparator.comparing(ShaftSection::from)).toList();
    }

    /** A stretch of a device that no section covers. */
    static Stretch uncovered(Device device, Length from, Length to) {
        Reason why = Reason.of(ReasonCode.UNCOVERED_STRETCH, Reason.name(device.id()), Reason.distance(from),
                Reason.distance(to));
        return Stretch.unknown("", from, to, why, SourceRef.NONE);
    }

    private void addSection(List<Stretch> stretches, ShaftSection section, Phase phase) {
        Stretch alone = contours.read(section, phase, Optional.empty());
        Length port = exitPort.orElse(section.to());
        if (portUnknown) {
            stretches.add(alone);
            stretches.add(unknown(section, ReasonCode.PORT_NOT_STATED));
        } else if (port.compareTo(section.to()) >= 0) {
            stretches.add(alone);
        } else if (wire.diameter().isPresent()) {
            addUpTo(port, alone, stretches);
            stretches.add(from(port, besideWire(section, phase)));
        } else {
            stretches.add(alone);
            stretches.add(from(port, unknown(section, ReasonCode.OWN_WIRE_NOT_STATED)));
        }
    }

    private static void addUpTo(Length port, Stretch whole, List<Stretch> stretches) {
        if (whole.from().compareTo(port) < 0) {
            stretches.add(whole.between(whole.from(), port, RoundingMode.CEILING));
        }
    }

    private static Stretch from(Length port, Stretch whole) {
        return whole.between(port.max(whole.from()), whole.to(), RoundingMode.CEILING);
    }

    private Stretch besideWire(ShaftSection section, Phase phase) {
        Stretch both = contours.read(section, phase, wire.diameter());
        return both.diameter().isEmpty() ? both
                : both.noting(Reason.of(ReasonCode.OWN_WIRE_BESIDE, Reason.name(device.id()),
                        Reason.diameter(wire.diameter().get().centre())));
    }

    /** It lies over the shaft alone, which may already be too thick. */
    private Stretch unknown(ShaftSection section, ReasonCode code) {
        Reason why = Reason.of(code, Reason.name(device.id()));
        return Stretch.unknown(section.name(), section.from(), section.to(), why, section.source());
    }
}
