/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.table;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.profile.Landmark;
import org.ferrule.profile.ProfiledDevice;
import org.ferrule.profile.curve.Curve;
import org.ferrule.profile.curve.DeviceCurves;
import org.ferrule.profile.curve.Piece;
import org.ferrule.profile.curve.Reading;
import org.ferrule.quantity.Length;

/** The values of one device in the table of differences. */
final class DeviceValues {
    private static final Value NOT_KNOWN = new Value.NotKnown();
    private static final Value NONE = new Value.None();

    private final ProfiledDevice profiled;
    private final Device device;
    private final DeviceCurves curves;
    private final Optional<Figure> wire;

    DeviceValues(ProfiledDevice profiled, Optional<Figure> wire) {
        this.profiled = profiled;
        this.device = profiled.read().device();
        this.curves = profiled.fromTip();
        this.wire = wire;
    }

    Value of(Quantity quantity) {
        return switch (quantity) {
            case ENTRY_PROFILE -> entryProfile();
            case CROSSING_PROFILE -> crossingProfile();
            case LARGEST_PROFILE -> largest(curves.outer(), curves.outer().largestAt());
            case LARGEST_WITH_WIRE -> curves.withWire().map(curve -> largest(curve, curve.largestAt())).orElse(NONE);
            case EFFECTIVE_LENGTH -> device.statedLength().map(DeviceValues::distance).orElse(NOT_KNOWN);
            case EXIT_PORT -> exitPort();
            case LONGEST_RIGID -> device.sections().stream().filter(ShaftSection::rigid)
                    .map(section -> section.to().minus(section.from())).max(Length::compareTo)
                    .map(DeviceValues::distance).orElse(NONE);
            case NARROWEST_LUMEN -> lumen().map(this::narrowest).orElse(NONE);
            case LEFT_BESIDE_WIRE -> wire.flatMap(diameter -> lumen().map(l -> left(l, diameter))).orElse(NONE);
            case STIFFNESS_STEPS -> stiffness();
        };
    }

    private static Value distance(Length length) {
        return new Value.Distance(length);
    }

    private Value entryProfile() {
        return curves.outer().at(Length.ZERO) instanceof Reading.Known known
                ? new Value.Outer(known.figure(), known.assumed(), Optional.empty()) : NOT_KNOWN;
    }

    private Value crossingProfile() {
        List<ShaftSection> profiles = device.sections().stream().filter(ShaftSection::crossingProfile).toList();
        List<Piece> pieces = curves.outer().pieces().stream()
                .filter(piece -> profiles.stream().anyMatch(section -> isOf(piece, section))).toList();
        return profiles.isEmpty() ? NONE : largest(new Curve(Curve.Kind.OUTER, "", pieces), Optional.empty());
    }

    private static boolean isOf(Piece piece, ShaftSection section) {
        return piece.section().equals(section.name()) && piece.from().equals(section.from());
    }

    private static Value largest(Curve curve, Optional<Length> at) {
        boolean assumed = curve.pieces().stream().anyMatch(Piece::isAssumed);
        return curve.extreme().<Value>map(figure -> new Value.Outer(figure, assumed, at)).orElse(NOT_KNOWN);
    }

    private Value exitPort() {
        boolean leaves = device.lumens().stream().anyMatch(Lumen::leavesShaft);
        Optional<Length> port = Landmark.of(Landmark.Kind.EXIT_PORT).on(profiled.read());
        return leaves ? port.map(DeviceValues::distance).orElse(NOT_KNOWN) : NONE;
    }

    private Optional<Lumen> lumen() {
        return device.mainLumen();
    }

    private Value narrowest(Lumen lumen) {
        boolean assumed = pieces(lumen).stream().anyMatch(Piece::isAssumed);
        return smallest(lumen).<Value>map(known -> new Value.Inner(known, assumed)).orElse(NOT_KNOWN);
    }

    private Value left(Lumen lumen, Figure diameter) {
        return smallest(lumen).<Value>map(figure -> new Value.Left(Clearance.between(figure, diameter)))
                .orElse(NOT_KNOWN);
    }

    private Optional<Figure> smallest(Lumen lumen) {
        return new Curve(Curve.Kind.INNER, lumen.name(), pieces(lumen)).extreme();
    }

    private List<Piece> pieces(Lumen lumen) {
        return curves.inner().stream().filter(curve -> curve.name().equals(lumen.name()))
                .flatMap(curve -> curve.pieces().stream()).toList();
    }

    private Value stiffness() {
        long stated = device.sections().stream().filter(section -> section.stiffness().isPresent()).count();
        if (stated == 0) {
            return device.sections().isEmpty() ? NONE : NOT_KNOWN;
        }
        return new Value.Steps(StiffnessJump.of(device), stated == device.sections().size());
    }
}
