/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.quantity.Length;

/**
 * A guide extension in place, through which a device passes: from its collar to its tip the extension's lumen replaces
 * the outer one; proximal to the collar the outer lumen stays, with the push rod as an occupant.
 *
 * @param extension the extension
 * @param lumen of {@code extension} that the device passes
 * @param protrusion how far its tip lies beyond the outer device's distal opening; negative when it lies inside
 */
public record Through(ReadDevice extension, Lumen lumen, Length protrusion) {

    public Through {
        Objects.requireNonNull(extension, "extension");
        Objects.requireNonNull(lumen, "lumen");
        Objects.requireNonNull(protrusion, "protrusion");
        if (!extension.device().lumens().contains(lumen)) {
            throw new IllegalArgumentException("device \"" + extension.device().id() + "\" has no such lumen \""
                    + lumen.name() + "\"");
        }
        if (!lumen.length().equals(Length.ZERO) && protrusion.compareTo(lumen.proximalAt()) >= 0) {
            throw new IllegalArgumentException("extension \"" + extension.device().id() + "\" protrudes by "
                    + protrusion.mm() + " mm, but its tube is only " + lumen.proximalAt().mm() + " mm long");
        }
    }

    /** Where the tube overlaps the outer lumen on its way in, if it does not even go in there by itself. */
    public Optional<Contact> tooThickFor(List<Stretch> outer, Length outerLength) {
        List<Stretch> tube = Stretch.upTo(lumen.proximalAt(), extension.shaft(Phase.IN), RoundingMode.CEILING);
        return Transit.of(outer, tube, tipAt(outerLength)).firstOverlap();
    }

    /** What a section of its lumen is called on the way. */
    public String nameOf(String section) {
        Device device = extension.device();
        return (device.name().isEmpty() ? device.id() : device.name()) + " " + section;
    }

    /** Where its tip lies, from the proximal entry of a lumen of that length around it. */
    Length tipAt(Length outerLength) {
        return outerLength.plus(protrusion);
    }

    /** Where its lumen begins, from the proximal entry of a lumen of that length around it. */
    public Length collarAt(Length outerLength) {
        return tipAt(outerLength).minus(lumen.proximalAt());
    }

    /** Where its lumen ends, from the proximal entry of a lumen of that length around it. */
    Length opensAt(Length outerLength) {
        return tipAt(outerLength).minus(lumen.distalAt());
    }
}
