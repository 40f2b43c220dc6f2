/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Disc;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;
import org.ferrule.quantity.Stiffness;

/** Copies the shaft sections of one device. */
final class SectionTranslator {
    private final DeviceParts parts;
    private final SourceIndex sources;

    SectionTranslator(DeviceParts parts, SourceIndex sources) {
        this.parts = parts;
        this.sources = sources;
    }

    List<ShaftSection> translate() {
        return parts.getSections().stream().filter(SectionTranslator::hasStations).map(this::section).toList();
    }

    private static boolean hasStations(org.ferrule.model.ShaftSection section) {
        Optional<Length> from = Stations.of(section.getFrom());
        Optional<Length> to = Stations.of(section.getTo());
        return from.isPresent() && to.isPresent() && !from.get().isNegative()
                && from.get().compareTo(to.get()) <= 0;
    }

    private ShaftSection section(org.ferrule.model.ShaftSection section) {
        Contour distal = contour(section, section.getOd());
        Contour proximal = section.getOdProximal() == null ? distal : contour(section, section.getOdProximal());
        Contour distalAfter = section.getOdAfter() == null ? distal : round(section.getOdAfter());
        Contour proximalAfter = proximalAfter(section, proximal, distalAfter);
        return new ShaftSection(DeviceTranslator.text(section.getName()),
                Stations.of(section.getFrom()).orElseThrow(), Stations.of(section.getTo()).orElseThrow(), distal,
                proximal, distalAfter, proximalAfter, afterUse(section), isCrossingProfile(section),
                section.isRigid(), sources.of(section), Stiffness.read(DeviceTranslator.text(section.getStiffness())));
    }

    private static Contour contour(org.ferrule.model.ShaftSection section, Dimension diameter) {
        if (section.getOval() != null && section.getOval().getWidth() != null
                && section.getOval().getHeight() != null) {
            return new Contour.Oval(section.getOval().getWidth(), section.getOval().getHeight());
        }
        if (!section.getDiscs().isEmpty() && section.getDiscs().stream().allMatch(SectionTranslator::isPlaced)) {
            return new Contour.Bundle(section.getDiscs().stream().map(SectionTranslator::member).toList());
        }
        return round(diameter);
    }

    private static boolean isPlaced(Disc disc) {
        return isReadable(disc.getX()) && isReadable(disc.getY()) && disc.getDiameter() != null;
    }

    private static boolean isReadable(Offset offset) {
        return offset != null && offset.readable();
    }

    private static Contour.Member member(Disc disc) {
        return new Contour.Member(disc.getX().value(), disc.getY().value(), disc.getDiameter());
    }

    private static Contour round(Dimension diameter) {
        return new Contour.Round(Optional.ofNullable(diameter));
    }

    private static Contour proximalAfter(org.ferrule.model.ShaftSection section, Contour proximal,
            Contour distalAfter) {
        if (section.getOdAfterProximal() != null) {
            return round(section.getOdAfterProximal());
        }
        return section.getOdAfter() == null ? proximal : distalAfter;
    }

    private AfterUse afterUse(org.ferrule.model.ShaftSection section) {
        if (section.getOdAfter() != null) {
            return AfterUse.STATED;
        }
        return isBalloon(section) ? AfterUse.GROWS : AfterUse.UNCHANGED;
    }

    private boolean isBalloon(org.ferrule.model.ShaftSection section) {
        return parts.getBalloon() != null && section.getName() != null
                && section.getName().equals(parts.getBalloon().getSection());
    }

    private boolean isCrossingProfile(org.ferrule.model.ShaftSection section) {
        boolean isStent = parts.getStent() != null && section.getName() != null
                && section.getName().equals(parts.getStent().getSection());
        return isStent || isBalloon(section);
    }
}
