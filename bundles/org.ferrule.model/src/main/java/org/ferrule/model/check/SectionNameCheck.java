/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Device;
import org.ferrule.model.ResolvedDevice;

/** A balloon, a stent and a cutter sit at a section that their device has, be it an inherited one. */
final class SectionNameCheck implements DeviceCheck {

    @Override
    public void check(ResolvedDevice resolved, Examination examination) {
        Device device = resolved.device();
        Stream.of(device.getBalloon(), device.getStent(), device.getCutter()).filter(Objects::nonNull)
                .forEach(part -> check(resolved, part, examination));
    }

    private static void check(ResolvedDevice resolved, EObject part, Examination examination) {
        EStructuralFeature feature = part.eClass().getEStructuralFeature("section");
        Object name = part.eGet(feature);
        if (name != null && resolved.device().getSections().stream().noneMatch(s -> name.equals(s.getName()))) {
            examination.add(ProblemCode.UNKNOWN_REFERENCE, resolved.statedBy(part, feature), feature, name.toString(),
                    "section");
        }
    }
}
