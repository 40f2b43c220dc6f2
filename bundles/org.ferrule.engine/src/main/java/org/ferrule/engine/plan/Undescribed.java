/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.escalation.technique.Need;
import org.ferrule.model.Fact;
import org.ferrule.model.TechniqueLibrary;

/**
 * The facts of a ladder, and what stands for conditions that cannot be read: a fact that no case can state, so that a
 * technique with such a condition is never planned.
 */
final class Undescribed {
    /** No usable id of a document begins so. */
    private static final String MARK = "#";

    private final PlanProblems problems;
    private final Map<String, String> facts = new LinkedHashMap<>();

    Undescribed(TechniqueLibrary library, PlanProblems problems) {
        this.problems = problems;
        for (Fact fact : library.getFacts()) {
            if (fact.getId() != null) {
                facts.putIfAbsent(fact.getId(), fact.getWords() == null ? fact.getId() : fact.getWords());
            }
        }
    }

    /** The facts by id, with those that no case can state. */
    Map<String, String> facts() {
        return facts;
    }

    boolean knows(String fact) {
        return facts.containsKey(fact);
    }

    /** Tells what cannot be read, and adds a need that never holds. */
    void need(List<Need> needs, EObject subject, EStructuralFeature feature, String message) {
        problems.add(subject, feature, message);
        String id = MARK + (facts.size() + 1);
        facts.put(id, "cannot be planned with: " + message);
        needs.add(new Need.Fact(id));
    }
}
