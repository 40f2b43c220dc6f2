/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.check.Severity;

/**
 * Something wrong or doubtful at a place of a document.
 *
 * @param severity how grave it is
 * @param code what it is, as a name that stays the same whatever the words
 * @param message what it is, in English, ending without a full stop
 * @param expected what was expected instead, in English; empty if the message says it all
 * @param suggestion a text that could stand at the region instead; empty if there is no safe one
 * @param region where it is
 * @param subject the object that it is about, as far as there is one
 * @param feature the feature of the subject that it is about, as far as there is one
 */
public record DocumentProblem(Severity severity, String code, String message, String expected, String suggestion,
        TextRegion region, Optional<EObject> subject, Optional<EStructuralFeature> feature) {

    /** Returns the line, counted from 1. */
    public int line() {
        return region.line();
    }

    /** Returns the column, counted from 1. */
    public int column() {
        return region.column();
    }

    /** Returns the message with what was expected. */
    public String text() {
        return expected.isEmpty() ? message : message + "; expected " + expected;
    }
}
