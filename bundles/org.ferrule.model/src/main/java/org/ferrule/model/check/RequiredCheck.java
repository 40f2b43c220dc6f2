/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import org.eclipse.emf.ecore.EObject;

/** What the Ecore requires must be there. */
final class RequiredCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        object.eClass().getEAllStructuralFeatures().stream()
                .filter(feature -> feature.isRequired() && feature.getEType().getInstanceClass() != int.class
                        && !object.eIsSet(feature))
                .forEach(feature -> examination.add(ProblemCode.MISSING_VALUE, object, feature, feature.getName()));
    }
}
