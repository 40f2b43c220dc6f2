/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Parts;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.LengthChain.Link;
import org.ferrule.fit.evidence.LengthChain.Part;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * What of a device comes less far than its tip: the plane that it images, and the first marker of a balloon or stent.
 * The tip has to come that much farther than what is to be seen or treated. Notes only.
 */
public final class LandingCheck implements FitCheck {

    @Override
    public boolean inMatrix() {
        return false;
    }

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        Parts parts = question.inner().device().parts();
        boolean asked = question.direction() == Direction.TIP_FIRST && question.reach().isPresent();
        Optional<Length> marker = parts.balloon().isPresent() || parts.stent().isPresent() ? firstMarker(parts)
                : Optional.empty();
        boolean hasAny = parts.imagingPlane().isPresent() || marker.isPresent();
        return asked && hasAny ? found(question, parts.imagingPlane(), marker) : Finding.SILENT;
    }

    private static Optional<Length> firstMarker(Parts parts) {
        return parts.markers().stream().map(Parts.MarkerPart::station).min(Length::compareTo);
    }

    private static Finding found(FitQuestion question, Optional<Length> plane, Optional<Length> marker) {
        List<Reason> reasons = new ArrayList<>();
        List<Evidence> evidence = new ArrayList<>();
        plane.ifPresent(behind -> add(question, ReasonCode.LANDING_OF_PLANE, behind, reasons, evidence));
        marker.ifPresent(behind -> add(question, ReasonCode.LANDING_OF_MARKER, behind, reasons, evidence));
        return new Finding(Verdict.FITS, Optional.empty(), Optional.empty(), Optional.empty(), reasons, evidence);
    }

    private static void add(FitQuestion question, ReasonCode code, Length behind, List<Reason> reasons,
            List<Evidence> evidence) {
        String device = question.inner().device().id();
        LengthChain chain = LengthChain.of(LengthChain.Question.LANDING,
                new Link(Part.REACH_ASKED, "", question.reach().orElseThrow()),
                new Link(Part.TIP_TO_PLANE, device, behind.negated()));
        if (!chain.margin().isNegative()) {
            reasons.add(Reason.of(code, Reason.name(device), Reason.distance(behind), Reason.distance(chain.margin())));
        }
        evidence.add(chain);
    }
}
