/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.problem;

import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.io.json.TextRegion;
import org.ferrule.model.ElementPath;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.document.DocumentRecord;
import org.ferrule.ui.look.ElementWords;

/**
 * Something wrong or doubtful in a document.
 *
 * @param severity how grave it is
 * @param code what it is, as a name that stays the same whatever the words
 * @param message what it is, in English, for the user
 * @param suggestion a text that could stand there instead; empty if there is no safe one
 * @param region where it is in the text, as well as is known
 * @param path the object that it is about, see {@link ElementPath}; empty for the document
 * @param feature the name of the object's feature that it is about; empty for the whole object
 * @param place which object that is, in words; empty for the document
 */
public record FoundProblem(Severity severity, String code, String message, String suggestion, TextRegion region,
        String path, String feature, String place) {

    /** Checks that nothing is missing. */
    public FoundProblem {
        Objects.requireNonNull(severity);
        Objects.requireNonNull(message);
        Objects.requireNonNull(region);
    }

    /**
     * Makes a problem of an object of the record's document; its place in the text is looked up.
     *
     * @param feature the feature, or null for the whole object
     */
    public static FoundProblem at(DocumentRecord record, EObject object, EStructuralFeature feature, Severity severity,
            String code, String message) {
        return new FoundProblem(severity, code, message, "", record.content().positions().closest(object, feature),
                ElementPath.of(object), feature == null ? "" : feature.getName(), ElementWords.of(object));
    }
}
