/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Something wrong or doubtful about an object of a document.
 *
 * @param subject the object
 * @param feature the feature that it is about; null if it is about the whole object
 * @param index the index of the value in a feature with many values; {@link #WHOLE} otherwise
 * @param code what it is
 * @param arguments the figures and names that belong to it
 * @param part the part of the text of the value that it is about; null if it is the whole value
 */
public record ModelProblem(EObject subject, EStructuralFeature feature, int index, ProblemCode code,
        List<String> arguments, Part part) {

    /** The index of a problem that is not about one of many values. */
    public static final int WHOLE = -1;

    /**
     * A part of a text.
     *
     * @param start the index where it begins, from 0
     * @param end the index where it ends, exclusive; equal to start for a mere place
     */
    public record Part(int start, int end) {
    }

    /** Checks that there is a subject and a code. */
    public ModelProblem {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(code, "code");
        arguments = List.copyOf(arguments);
    }

    /** Returns how grave it is. */
    public Severity severity() {
        return code.severity();
    }

    /** Returns what it is in English, ending without a full stop. */
    public String message() {
        return ProblemWords.of(code, arguments);
    }
}
