/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShaftSection;

/** A cross-section is given in one way. */
final class CrossSectionCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof ShaftSection section) {
            Map<String, Boolean> ways = new TreeMap<>(Map.of(
                    "od", section.getOd() != null || section.getOdProximal() != null,
                    "oval", section.getOval() != null,
                    "discs", !section.getDiscs().isEmpty()));
            List<String> given = ways.keySet().stream().filter(ways::get).toList();
            if (given.size() > 1) {
                examination.add(ProblemCode.SEVERAL_CROSS_SECTIONS, section,
                        section.getOval() == null ? Literals.SHAFT_SECTION__DISCS : Literals.SHAFT_SECTION__OVAL,
                        String.join(" and ", given));
            }
        }
    }
}
