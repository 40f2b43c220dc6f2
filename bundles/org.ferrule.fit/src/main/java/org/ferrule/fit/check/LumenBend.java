/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.verdict.Lane;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.geometry.RigidInBend;
import org.ferrule.quantity.Length;

/** A rigid part in a bent lumen, which does not yield. */
final class LumenBend {
    private final RigidPart part;
    private final FreeLumen lumen;
    private final Bend bend;
    private final Length required;

    LumenBend(RigidPart part, FreeLumen lumen, Bend bend, Length required) {
        this.part = part;
        this.lumen = lumen;
        this.bend = bend;
        this.required = required;
    }

    Finding finding() {
        Optional<Figure> thickest = part.thickest();
        boolean stops = stops();
        if (thickest.isEmpty() || lumen.narrowest().isEmpty()) {
            return stops ? Finding.of(Verdict.BLOCKED, List.of(stopsReason(longestOfCores()))) : unknown();
        }
        Figure free = lumen.narrowest().get();
        Length worst = clearance(free.low(), thickest.get().high());
        boolean fits = worst.compareTo(required) >= 0;
        Verdict verdict = fits ? Verdict.FITS : stops ? Verdict.BLOCKED : Verdict.TIGHT;
        BendRoom room = stops ? room(free.centre(), thickest.get().centre()) : room(free.low(), thickest.get().high());
        List<Reason> reasons = new ArrayList<>();
        reasons.add(fits ? reason(ReasonCode.RIGID_PASSES_BEND, room.longest().orElseThrow())
                : stops ? stopsReason(room.longest().orElseThrow()) : tight(worst));
        Length nominal = clearance(free.centre(), thickest.get().centre());
        if (verdict == Verdict.TIGHT && nominal.isNegative()) {
            reasons.add(Reason.of(ReasonCode.NOT_PROVED, Reason.clearance(nominal)));
        }
        addNotes(reasons, free);
        return Finding.shown(verdict, reasons, new Evidence[] { room });
    }

    /**
     * Whether a cylinder within the part is too long for the widest place of the lumen, with nothing else in it: only
     * that proves a stop, wherever the bend lies and however the others make room.
     */
    private boolean stops() {
        if (lumen.widest().isEmpty()) {
            return false;
        }
        Figure widest = lumen.widest().get();
        return part.cores(Lane.NOMINAL).stream()
                .anyMatch(core -> !assumed(core) && stops(widest.centre(), core))
                || part.cores(Lane.BEST).stream().anyMatch(core -> assumed(core) && stops(widest.high(), core));
    }

    private boolean assumed(RigidPart.Core core) {
        return core.centreAssumed() || lumen.widest().orElseThrow().centreAssumed();
    }

    private boolean stops(Length diameter, RigidPart.Core core) {
        return longest(diameter.min(bend.radius().times(2)), core.diameter()).compareTo(core.length()) < 0;
    }

    private Length longestOfCores() {
        Figure widest = lumen.widest().orElseThrow();
        return part.cores(Lane.BEST).stream()
                .map(core -> longest(widest.high().min(bend.radius().times(2)), core.diameter()))
                .max(Length::compareTo).orElseThrow();
    }

    /** The clearance of a lumen over the one that the part needs in the bend; the formula holds up to the radius. */
    private Length clearance(Length diameter, Length device) {
        return diameter.min(bend.radius()).minus(RigidInBend.lumenNeeded(device, part.length(), bend.radius()));
    }

    private Length longest(Length diameter, Length device) {
        return diameter.equals(Length.ZERO) ? Length.ZERO : RigidInBend.longest(diameter, device, bend.radius());
    }

    private BendRoom room(Length free, Length device) {
        Length counted = free.min(bend.radius());
        Optional<Length> leastRadius = counted.equals(Length.ZERO) ? Optional.empty()
                : RigidInBend.leastRadius(counted, device, part.length());
        return new BendRoom(part.name(), part.length(), device, Optional.of(free), bend.radius(), false,
                Optional.of(longest(counted, device)), leastRadius);
    }

    private Reason stopsReason(Length longest) {
        return reason(ReasonCode.RIGID_STOPS_IN_BEND, longest);
    }

    private Reason reason(ReasonCode code, Length longest) {
        return Reason.of(code, Reason.name(part.name()), Reason.distance(part.length()), Reason.distance(longest),
                Reason.distance(bend.radius()));
    }

    private Reason tight(Length worst) {
        return Reason.of(ReasonCode.RIGID_TIGHT_IN_BEND, Reason.clearance(worst), Reason.clearance(required),
                Reason.name(part.name()), Reason.distance(part.length()), Reason.distance(bend.radius()));
    }

    private void addNotes(List<Reason> reasons, Figure free) {
        bend.length().filter(length -> length.compareTo(part.length()) < 0).ifPresent(length -> reasons.add(Reason.of(
                ReasonCode.BEND_SHORTER_THAN_PART, Reason.distance(length), Reason.distance(part.length()))));
        if (bend.radius().compareTo(free.low()) < 0) {
            reasons.add(Reason.of(ReasonCode.BEND_NARROWER_THAN_LUMEN, Reason.distance(bend.radius()),
                    Reason.diameter(free.low())));
        }
    }

    private Finding unknown() {
        List<Reason> why = new ArrayList<>(lumen.narrowest().isEmpty() ? lumen.why() : List.of());
        part.unknown().ifPresent(stretch -> why.addAll(stretch.notes()));
        return Finding.of(Verdict.UNKNOWN, why);
    }
}
