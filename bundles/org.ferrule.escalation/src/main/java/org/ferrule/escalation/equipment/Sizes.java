/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Parts;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Which devices a role may be played by, going by kind and printed sizes alone. */
final class Sizes {
    private final Target target;

    Sizes(Target target) {
        this.target = target;
    }

    /** Whether the device is of the kind and size that the role asks for. What is not printed is not of that size. */
    boolean match(Role role, Device device) {
        Selection selection = role.selection();
        boolean named = selection.devices().isEmpty() || selection.devices().contains(device.id());
        boolean ofKind = selection.kinds().isEmpty() || selection.kinds().contains(device.kind());
        return selection.equipment().isEmpty() && named && ofKind && runsOn(role.carrier(), device)
                && isIn(selection.nominalDiameter(), nominalDiameter(device))
                && isIn(selection.nominalLength(), nominalLength(device))
                && isIn(selection.wire(), thickest(device)) && suitsVessel(role, device);
    }

    /** What has no lumen for a wire cannot run on one. */
    private static boolean runsOn(Carrier carrier, Device device) {
        return carrier == Carrier.NONE || device.wireLumen().isPresent();
    }

    private boolean suitsVessel(Role role, Device device) {
        if (role.selection().toVessel().isAny()) {
            return true;
        }
        Optional<Length> vessel = role.goal() == Goal.BRANCH ? target.branch() : target.vessel();
        Optional<Length> diameter = nominalDiameter(device);
        return vessel.isPresent() && diameter.isPresent()
                && role.selection().toVessel().contains(diameter.get().mm() / vessel.get().mm());
    }

    private static boolean isIn(LengthRange range, Optional<Length> length) {
        return range.isAny() || length.filter(range::contains).isPresent();
    }

    private static Optional<Length> nominalDiameter(Device device) {
        return printed(device.parts().balloon().flatMap(Parts.BalloonPart::nominalDiameter)
                .or(() -> device.parts().stent().flatMap(Parts.StentPart::nominalDiameter))
                .or(() -> device.parts().cutter().flatMap(Parts.CutterPart::diameter)));
    }

    private static Optional<Length> nominalLength(Device device) {
        return printed(device.parts().balloon().flatMap(Parts.BalloonPart::nominalLength)
                .or(() -> device.parts().stent().flatMap(Parts.StentPart::nominalLength)));
    }

    private static Optional<Length> thickest(Device device) {
        return device.sections().stream().flatMap(s -> Stream.of(s.distal(), s.proximal()))
                .filter(Contour.Round.class::isInstance).flatMap(c -> ((Contour.Round) c).diameter().stream())
                .filter(Dimension::readable).map(Dimension::label).max(Comparator.naturalOrder());
    }

    private static Optional<Length> printed(Optional<Dimension> dimension) {
        return dimension.filter(Dimension::readable).map(Dimension::label);
    }
}
