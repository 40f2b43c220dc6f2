/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * One orderable size of a device, as its papers describe it: everything inherited from its line is filled in.
 *
 * @param id unique within a library
 * @param name for people
 * @param kind what it is called in the trade
 * @param size its size designation, a name that is never converted to a diameter; may be empty
 * @param effectiveLength the length that can be inserted (ISO 10555-1); absent when not stated
 * @param takesWire the largest wire it is stated to take; a claim, not a lumen
 * @param sections of its shaft, in any order; stations that none covers are unknown
 * @param lumens in the order of its papers
 * @param deploys whether it carries something that can be stripped off at an edge (a crimped stent)
 * @param claims what its papers say of partners
 * @param parts what gives it its abilities
 * @param wireSource where {@code takesWire} was read; {@link SourceRef#NONE} when nobody says
 */
public record Device(String id, String name, DeviceKind kind, String size, Optional<Dimension> effectiveLength,
        Optional<Dimension> takesWire, List<ShaftSection> sections, List<Lumen> lumens, boolean deploys,
        List<Claim> claims, Parts parts, SourceRef wireSource) {

    public Device {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(size, "size");
        Objects.requireNonNull(effectiveLength, "effectiveLength");
        Objects.requireNonNull(takesWire, "takesWire");
        sections = List.copyOf(sections);
        lumens = List.copyOf(lumens);
        claims = List.copyOf(claims);
        Objects.requireNonNull(parts, "parts");
        Objects.requireNonNull(wireSource, "wireSource");
    }

    /** A device of which nobody says where the wire that it takes was read. */
    public Device(String id, String name, DeviceKind kind, String size, Optional<Dimension> effectiveLength,
            Optional<Dimension> takesWire, List<ShaftSection> sections, List<Lumen> lumens, boolean deploys,
            List<Claim> claims, Parts parts) {
        this(id, name, kind, size, effectiveLength, takesWire, sections, lumens, deploys, claims, parts,
                SourceRef.NONE);
    }

    /** A device without parts that matter. */
    public Device(String id, String name, DeviceKind kind, String size, Optional<Dimension> effectiveLength,
            Optional<Dimension> takesWire, List<ShaftSection> sections, List<Lumen> lumens, boolean deploys,
            List<Claim> claims) {
        this(id, name, kind, size, effectiveLength, takesWire, sections, lumens, deploys, claims, Parts.NONE);
    }

    /**
     * The lumen of that name.
     *
     * @throws IllegalArgumentException naming device and lumen when there is none
     */
    public Lumen lumen(String lumenName) {
        return lumens.stream().filter(l -> l.name().equals(lumenName)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "device \"" + id + "\" has no lumen \"" + lumenName + "\""));
    }

    /** The lumen through which its own wire runs, when it has one. */
    public Optional<Lumen> wireLumen() {
        return firstLumen(Lumen.Use.WIRE).or(() -> firstLumen(Lumen.Use.WORKING));
    }

    /** The lumen that other devices are advanced through, when it has one: the working lumen, else the wire lumen. */
    public Optional<Lumen> mainLumen() {
        return firstLumen(Lumen.Use.WORKING).or(() -> firstLumen(Lumen.Use.WIRE));
    }

    /** The wire lumen that leaves its shaft at a side port, the most distal one where there are several. */
    public Optional<Lumen> sidePort() {
        return lumens.stream().filter(l -> l.use() == Lumen.Use.WIRE && l.opening() == Lumen.Opening.SIDE_PORT)
                .min(Comparator.comparing(Lumen::proximalAt));
    }

    /** Its effective length where that is stated. */
    public Optional<Length> statedLength() {
        return effectiveLength.filter(Dimension::readable).map(Dimension::label);
    }

    /** Its insertable length as far as that is known: the effective length, else the end of its last section. */
    public Optional<Length> insertableLength() {
        return statedLength().or(() -> sections.stream().map(ShaftSection::to).max(Length::compareTo));
    }

    /** Whether use may leave it thicker than before: it has a balloon, or a profile that is folded or crimped. */
    public boolean changesByUse() {
        return parts.balloon().isPresent() || sections.stream()
                .anyMatch(s -> s.crossingProfile() || s.afterUse() != ShaftSection.AfterUse.UNCHANGED);
    }

    private Optional<Lumen> firstLumen(Lumen.Use use) {
        return lumens.stream().filter(l -> l.use() == use).findFirst();
    }
}
