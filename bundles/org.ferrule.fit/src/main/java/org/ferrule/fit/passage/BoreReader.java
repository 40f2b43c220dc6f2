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
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.figure.ReadFigure;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * Reads the inner diameter of a lumen from its proximal entry. Stretches that no section covers are unknown, and what
 * lies beyond the lumen's length is left out. Sections may overlap; then the smallest counts.
 */
final class BoreReader {
    private final Device device;
    private final FigureReader reader;

    BoreReader(Device device, FigureReader reader) {
        this.device = device;
        this.reader = reader;
    }

    List<Stretch> read(Lumen lumen) {
        List<Stretch> stretches = new ArrayList<>();
        Length covered = Length.ZERO;
        for (LumenSection section : inOrder(lumen)) {
            if (section.from().compareTo(covered) > 0) {
                stretches.add(uncovered(lumen, covered, section.from()));
            }
            stretches.add(stretch(lumen, section));
            covered = covered.max(section.to());
        }
        if (covered.compareTo(lumen.length()) < 0 || stretches.isEmpty()) {
            stretches.add(uncovered(lumen, covered, lumen.length()));
        }
        return lumen.length().equals(Length.ZERO) ? List.copyOf(stretches)
                : Stretch.upTo(lumen.length(), stretches, RoundingMode.FLOOR);
    }

    private static List<LumenSection> inOrder(Lumen lumen) {
        return lumen.sections().stream().sorted(Comparator.comparing(LumenSection::from)).toList();
    }

    private Stretch uncovered(Lumen lumen, Length from, Length to) {
        return Stretch.unknown(lumen.name(), from, to, MissingFigures.missing(device, FigureClass.INNER_DIAMETER,
                lumen.name()), SourceRef.NONE);
    }

    private Stretch stretch(Lumen lumen, LumenSection section) {
        String name = section.name().isEmpty() ? lumen.name() : section.name();
        Optional<Reason> why = MissingFigures.firstOf(device, FigureClass.INNER_DIAMETER, name, section.proximal(),
                section.distal());
        if (why.isPresent()) {
            return Stretch.unknown(name, section.from(), section.to(), why.get(), section.source());
        }
        ReadFigure proximal = read(section.proximal().orElseThrow());
        ReadFigure distal = read(section.distal().orElseThrow());
        return new Stretch(name, section.from(), section.to(),
                Optional.of(taper(section, proximal.figure(), distal.figure())), true,
                Assumptions.of(device, name, List.of(proximal, distal)), section.source());
    }

    private static Taper taper(LumenSection section, Figure proximal, Figure distal) {
        boolean hasLength = section.to().compareTo(section.from()) > 0;
        return hasLength ? new Taper(proximal, distal) : Taper.constant(proximal.min(distal));
    }

    private ReadFigure read(Dimension printed) {
        return reader.read(printed, FigureClass.INNER_DIAMETER, device.kind());
    }
}
