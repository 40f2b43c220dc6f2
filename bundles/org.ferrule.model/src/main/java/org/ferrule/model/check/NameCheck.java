/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Lumen;

/** Names are unique among the sections and the lumens of a device and among the sections of a lumen. */
final class NameCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof DeviceParts device) {
            checkAll(device.getSections(), "section", examination);
            checkAll(device.getLumens(), "lumen", examination);
        }
        if (object instanceof Lumen lumen) {
            checkAll(lumen.getSections(), "section", examination);
        }
    }

    private static void checkAll(List<? extends EObject> parts, String what, Examination examination) {
        Set<Object> names = new HashSet<>();
        for (EObject part : parts) {
            EStructuralFeature feature = part.eClass().getEStructuralFeature("name");
            Object name = part.eGet(feature);
            if (name != null && !names.add(name)) {
                examination.add(ProblemCode.DUPLICATE_NAME, part, feature, name.toString(), what);
            }
        }
    }
}
