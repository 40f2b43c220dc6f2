/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.evidence.SharedSection.Member;
import org.ferrule.fit.evidence.SharedSection.Part;
import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.Body;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.geometry.Stadium;
import org.ferrule.quantity.Length;

/** Places what lies side by side at a contact, as a reader can draw and check it. */
public final class CrossSection {
    private final List<Piece> pieces = new ArrayList<>();

    /** A part with the device that it belongs to. */
    private record Piece(Device device, String section, Part part, boolean moving, Profile profile) {
    }

    private CrossSection() {
    }

    /**
     * What lies at a contact, placed at its centres; nothing where a bare shaft lies there alone.
     *
     * @param contact of {@code device}
     * @param limiting the same place in stations that people use
     */
    public static Optional<SharedSection> at(Contact contact, Limiting limiting, Device device, Packings packings) {
        if (contact.beside().isEmpty() && !hasWire(contact.device())) {
            return Optional.empty();
        }
        CrossSection section = new CrossSection();
        Part part = device.kind() == DeviceKind.GUIDEWIRE ? Part.WIRE : Part.SHAFT;
        section.add(device, contact.device(), part, true, limiting.deviceStation());
        contact.beside().forEach(n -> section.add(n.device(), n.outline(), n.part(), false,
                n.stationAt(limiting.lumenStation())));
        return section.placed(limiting, packings);
    }

    private static boolean hasWire(Stretch outline) {
        return outline.shape().isPresent() && outline.shape().get().wire().isPresent();
    }

    private void add(Device device, Stretch outline, Part part, boolean moving, Length station) {
        outline.shape().ifPresent(shape -> {
            List<Profile> profiles = shape.at(station);
            pieces.add(new Piece(device, outline.name(), part, moving, profiles.get(0)));
            profiles.stream().skip(1).forEach(w -> pieces.add(new Piece(device, "", Part.WIRE, moving, w)));
        });
    }

    private Optional<SharedSection> placed(Limiting limiting, Packings packings) {
        List<Body> bodies = pieces.stream().map(p -> p.profile().body(Figure::centre)).toList();
        Enclosure enclosure = packings.placed(bodies);
        if (enclosure.discs().isEmpty()) {
            return Optional.empty();
        }
        List<Member> members = new ArrayList<>();
        for (int body = 0; body < bodies.size(); body++) {
            int from = members.size();
            int to = from + Packings.discs(bodies.get(body));
            members.addAll(members(pieces.get(body), body, enclosure.discs().subList(from, to)));
        }
        return Optional.of(new SharedSection(limiting.lumenSection(), limiting.lumenStation(),
                limiting.lumenDiameter(), members, enclosure.lowerDiameter(), enclosure.upperDiameter()));
    }

    private static List<Member> members(Piece piece, int body, List<PlacedDisc> discs) {
        boolean filled = piece.profile().body(Figure::centre) instanceof Stadium;
        List<Figure> figures = filled ? ends(piece.profile()) : piece.profile().figures();
        List<Member> members = new ArrayList<>();
        for (int i = 0; i < discs.size(); i++) {
            members.add(new Member(piece.device().id(), piece.section(), piece.part(), piece.moving(), figures.get(i),
                    body, filled, discs.get(i)));
        }
        return members;
    }

    /** Both round ends of an oval measure what is smaller across. */
    private static List<Figure> ends(Profile oval) {
        return Stream.generate(() -> oval.figures().get(0).min(oval.figures().get(1))).limit(2).toList();
    }
}
