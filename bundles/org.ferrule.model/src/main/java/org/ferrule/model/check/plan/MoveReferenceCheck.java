/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Move;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/** Techniques and set-ups name facts, set-ups and techniques of their document, and roles of their own. */
final class MoveReferenceCheck implements Check {

    private static final Map<String, BiFunction<TechniqueLibrary, EObject, List<? extends EObject>>> TARGETS = Map.of(
            Literals.FACT.getName(), (library, subject) -> library.getFacts(),
            Literals.SETUP.getName(), (library, subject) -> library.getSetups(),
            Literals.TECHNIQUE.getName(), (library, subject) -> library.getTechniques(),
            Literals.ROLE.getName(), (library, subject) -> ((Move) subject.eContainer()).getRoles());

    @Override
    public void check(EObject object, Examination examination) {
        if (EcoreUtil.getRootContainer(object) instanceof TechniqueLibrary library) {
            for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                Features.annotation(attribute, "refers").filter(TARGETS::containsKey)
                        .ifPresent(target -> check(library, object, attribute, target, examination));
            }
        }
    }

    private static void check(TechniqueLibrary library, EObject object, EAttribute attribute, String target,
            Examination examination) {
        List<? extends EObject> targets = TARGETS.get(target).apply(library, object);
        if (object.eGet(attribute) instanceof List<?> names) {
            for (int i = 0; i < names.size(); i++) {
                if (isMissing(names.get(i), targets)) {
                    examination.addAt(ProblemCode.UNKNOWN_REFERENCE, object, attribute, i,
                            String.valueOf(names.get(i)), word(target));
                }
            }
        } else if (object.eIsSet(attribute) && isMissing(object.eGet(attribute), targets)) {
            examination.add(ProblemCode.UNKNOWN_REFERENCE, object, attribute,
                    String.valueOf(object.eGet(attribute)), word(target));
        }
    }

    private static boolean isMissing(Object name, List<? extends EObject> targets) {
        return targets.stream().noneMatch(t -> Objects.equals(name, t.eGet(t.eClass().getEStructuralFeature("id"))));
    }

    private static String word(String target) {
        return target.equals(Literals.SETUP.getName()) ? "set-up" : target.toLowerCase(Locale.ROOT);
    }
}
