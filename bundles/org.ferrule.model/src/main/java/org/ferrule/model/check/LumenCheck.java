/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Lumen;
import org.ferrule.model.LumenSection;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.quantity.Length;

/** The sections of a lumen follow each other from its proximal entry to its distal opening, and not beyond. */
final class LumenCheck implements DeviceCheck {

    private static final EStructuralFeature FROM = Literals.LUMEN_SECTION__FROM;
    private static final EStructuralFeature TO = Literals.LUMEN_SECTION__TO;

    @Override
    public void check(ResolvedDevice resolved, Examination examination) {
        for (Lumen lumen : resolved.device().getLumens()) {
            Optional<Length> length = LumenPlace.of(resolved.device(), lumen).map(LumenPlace::length);
            List<LumenStretch> stretches = LumenStretch.all(lumen, length);
            for (int i = 0; i < stretches.size(); i++) {
                checkSection(resolved, stretches.get(i), length, examination);
                if (i > 0) {
                    checkJoint(resolved, stretches.get(i - 1), stretches.get(i), examination);
                }
            }
            if (!stretches.isEmpty() && stretches.size() == lumen.getSections().size()) {
                checkEnds(resolved, stretches, length, examination);
            }
        }
    }

    private static void checkSection(ResolvedDevice resolved, LumenStretch stretch, Optional<Length> length,
            Examination examination) {
        LumenSection section = stretch.section();
        EStructuralFeature feature = section.getTo() == null ? FROM : TO;
        Length end = section.getTo() == null ? stretch.from() : stretch.to();
        if (length.isPresent() && end.compareTo(length.get()) > 0) {
            examination.add(ProblemCode.LUMEN_TOO_LONG, resolved.statedBy(section, feature), feature, Lengths.mm(end),
                    Lengths.mm(length.get()));
        } else if (stretch.from().compareTo(stretch.to()) >= 0) {
            examination.add(ProblemCode.REVERSED_STATIONS, resolved.statedBy(section, feature), feature,
                    Lengths.mm(stretch.from()), Lengths.mm(stretch.to()));
        }
    }

    /** A section without stations may be what is missing, so the ends are looked at only if every one has them. */
    private static void checkEnds(ResolvedDevice resolved, List<LumenStretch> stretches, Optional<Length> length,
            Examination examination) {
        LumenStretch first = stretches.get(0);
        LumenStretch last = stretches.get(stretches.size() - 1);
        if (first.from().compareTo(Length.ZERO) > 0) {
            examination.add(ProblemCode.GAP, resolved.statedBy(first.section(), FROM), FROM, "the entry of the lumen",
                    Lengths.mm(first.from()));
        }
        if (length.isPresent() && last.to().compareTo(length.get()) < 0) {
            examination.add(ProblemCode.GAP, resolved.statedBy(last.section(), TO), TO, Lengths.mm(last.to()),
                    "the end of the lumen at " + Lengths.mm(length.get()));
        }
    }

    private static void checkJoint(ResolvedDevice resolved, LumenStretch proximal, LumenStretch distal,
            Examination examination) {
        int order = proximal.to().compareTo(distal.from());
        if (order != 0) {
            String end = Lengths.mm(proximal.to());
            String begin = Lengths.mm(distal.from());
            examination.add(order < 0 ? ProblemCode.GAP : ProblemCode.OVERLAP,
                    resolved.statedBy(distal.section(), FROM),
                    FROM, order < 0 ? end : begin, order < 0 ? begin : end);
        }
    }
}
