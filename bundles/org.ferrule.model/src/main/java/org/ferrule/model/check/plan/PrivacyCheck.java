/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.ExtraKey;
import org.ferrule.model.Lesion;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.VesselPath;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ModelProblem.Part;
import org.ferrule.model.check.ProblemCode;

/**
 * The free texts of a case, and those of a lesion and a vessel path in a chart, do not look as if they told who the
 * patient is. What looks like a text that could is a warning: no rule can know, and what does not look so may tell
 * nevertheless.
 */
final class PrivacyCheck implements Check {

    private static final Set<EStructuralFeature> FREE = Set.of(Literals.DOCUMENT__TITLE, Literals.SOURCED__NOTE,
            Literals.ACCESS__SITE, Literals.VESSEL_PATH__NAME, Literals.VESSEL_SEGMENT__NAME, Literals.LESION__NAME,
            Literals.SIDE_BRANCH__NAME, Literals.LOGGED_ATTEMPT__REMARK, Literals.EXTRA_KEY__JSON);

    @Override
    public void check(EObject object, Examination examination) {
        if (EcoreUtil.getRootContainer(object) instanceof CaseDocument || isOfAVessel(object)) {
            for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                if (FREE.contains(attribute) && object.eGet(attribute) instanceof String text) {
                    check(object, attribute, text, examination);
                }
            }
        }
        if (object instanceof ExtraKey extra && EcoreUtil.getRootContainer(object) instanceof CaseDocument
                && extra.getKey() != null) {
            check(extra, Literals.EXTRA_KEY__KEY, extra.getKey(), examination);
        }
    }

    private static boolean isOfAVessel(EObject object) {
        return object instanceof Lesion || object instanceof VesselPath
                || object.eContainer() instanceof VesselPath;
    }

    private static void check(EObject object, EAttribute attribute, String text, Examination examination) {
        PersonalText.find(text).ifPresent(found -> examination.addIn(ProblemCode.PERSONAL_TEXT, object, attribute,
                new Part(found.start(), found.end()), text.substring(found.start(), found.end()), found.what()));
    }
}
