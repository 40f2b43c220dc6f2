/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Comparator;
import java.util.List;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Device;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.model.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** The sections of a shaft follow each other from the tip to the effective length, with neither gap nor overlap. */
final class ShaftCheck implements DeviceCheck {

    private static final EStructuralFeature FROM = Literals.SHAFT_SECTION__FROM;
    private static final EStructuralFeature TO = Literals.SHAFT_SECTION__TO;

    @Override
    public void check(ResolvedDevice resolved, Examination examination) {
        Device device = resolved.device();
        List<ShaftSection> sections = device.getSections().stream().filter(ShaftCheck::hasStations)
                .sorted(Comparator.comparing(ShaftCheck::from)).toList();
        Dimension end = device.getEffectiveLength();
        for (int i = 0; i < sections.size(); i++) {
            ShaftSection section = sections.get(i);
            if (from(section).compareTo(to(section)) >= 0) {
                examination.add(ProblemCode.REVERSED_STATIONS, resolved.statedBy(section, TO), TO,
                        section.getFrom().text(), section.getTo().text());
            } else if (Lengths.isMore(section.getTo(), end)) {
                examination.add(ProblemCode.BEYOND_EFFECTIVE_LENGTH, resolved.statedBy(section, TO), TO,
                        section.getTo().text(), end.text());
            }
            if (i > 0) {
                checkJoint(resolved, sections.get(i - 1), section, examination);
            }
        }
        if (!sections.isEmpty() && sections.size() == device.getSections().size()) {
            checkEnds(resolved, sections, examination);
        }
    }

    private static void checkJoint(ResolvedDevice resolved, ShaftSection distal, ShaftSection proximal,
            Examination examination) {
        int order = to(distal).compareTo(from(proximal));
        if (order != 0) {
            String[] places = { distal.getTo().text(), proximal.getFrom().text() };
            examination.add(order < 0 ? ProblemCode.GAP : ProblemCode.OVERLAP, resolved.statedBy(proximal, FROM), FROM,
                    order < 0 ? places[0] : places[1], order < 0 ? places[1] : places[0]);
        }
    }

    /** A section without stations may be what is missing, so the ends are looked at only if every one has them. */
    private static void checkEnds(ResolvedDevice resolved, List<ShaftSection> sections, Examination examination) {
        ShaftSection first = sections.get(0);
        ShaftSection last = sections.get(sections.size() - 1);
        Dimension end = resolved.device().getEffectiveLength();
        if (from(first).compareTo(Length.ZERO) > 0) {
            examination.add(ProblemCode.GAP, resolved.statedBy(first, FROM), FROM, "the tip", first.getFrom().text());
        }
        if (Lengths.isMore(end, last.getTo())) {
            examination.add(ProblemCode.GAP, resolved.statedBy(last, TO), TO, last.getTo().text(),
                    "the effective length of " + end.text());
        }
    }

    private static boolean hasStations(ShaftSection section) {
        return Lengths.of(section.getFrom()).isPresent() && Lengths.of(section.getTo()).isPresent();
    }

    private static Length from(ShaftSection section) {
        return section.getFrom().label();
    }

    private static Length to(ShaftSection section) {
        return section.getTo().label();
    }
}
