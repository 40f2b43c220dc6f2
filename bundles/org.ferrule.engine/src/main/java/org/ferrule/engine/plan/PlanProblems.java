/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ElementPath;

/** Collects what is found while documents are read. */
final class PlanProblems {
    private final List<PlanProblem> found = new ArrayList<>();

    /** Of a value. */
    void add(EObject subject, EStructuralFeature feature, String message) {
        found.add(new PlanProblem(DocumentKind.of(EcoreUtil.getRootContainer(subject)), ElementPath.of(subject),
                feature.getName(), message));
    }

    /** Of a whole element. */
    void add(EObject subject, String message) {
        found.add(new PlanProblem(DocumentKind.of(EcoreUtil.getRootContainer(subject)), ElementPath.of(subject), "",
                message));
    }

    List<PlanProblem> all() {
        return List.copyOf(found);
    }
}
