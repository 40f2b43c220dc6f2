/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.geometry.RigidInBend;
import org.ferrule.quantity.Length;

/** A rigid part in a bent vessel, which straightens: what it must give way to is told, and no verdict is made of it. */
final class VesselBend {
    private VesselBend() {
    }

    static Finding finding(RigidPart part, Bend bend) {
        return part.thickest().map(figure -> finding(part, figure.high(), bend)).orElse(Finding.SILENT);
    }

    private static Finding finding(RigidPart part, Length diameter, Bend bend) {
        Optional<Length> leastRadius = bend.vessel()
                .flatMap(vessel -> RigidInBend.leastRadius(vessel, diameter, part.length()));
        BendRoom room = new BendRoom(part.name(), part.length(), diameter, Optional.empty(), bend.radius(), true,
                Optional.empty(), leastRadius);
        if (leastRadius.isEmpty()) {
            return Finding.shown(Verdict.FITS, List.of(reason(ReasonCode.VESSEL_MUST_BE_WIDE, part, bend,
                    Reason.diameter(RigidInBend.lumenNeeded(diameter, part.length(), bend.radius())))), room);
        }
        boolean straightens = leastRadius.get().compareTo(bend.radius()) > 0;
        return Finding.shown(Verdict.FITS, straightens ? List.of(reason(ReasonCode.VESSEL_MUST_STRAIGHTEN, part, bend,
                Reason.distance(leastRadius.get()))) : List.of(), room);
    }

    private static Reason reason(ReasonCode code, RigidPart part, Bend bend, Reason.Argument figure) {
        return Reason.of(code, Reason.name(part.name()), Reason.distance(part.length()),
                Reason.distance(bend.radius()), figure);
    }
}
