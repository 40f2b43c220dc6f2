/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.io.json.DocumentProblem;
import org.ferrule.io.json.ReadResult;
import org.ferrule.io.json.TextRegion;
import org.ferrule.model.Document;
import org.ferrule.model.ElementPath;

/**
 * What a file says at one moment: its document, or why it has none. Nobody changes the document of a record, so that
 * every thread may read it.
 *
 * @param file the file
 * @param content what was read
 * @param live whether it is the unsaved state of an open editor rather than the file on disk
 */
public record DocumentRecord(IFile file, ReadResult content, boolean live) {

    /** Returns the document; nothing if the file is broken. Must not be changed. */
    public Optional<Document> document() {
        return content.document();
    }

    /** Returns what is wrong with the document, in the order of the text. */
    public List<DocumentProblem> problems() {
        return content.problems();
    }

    /** Returns the place in the text of the object at the path, or of the closest that is known. */
    public Optional<TextRegion> region(String path, EStructuralFeature feature) {
        return document().flatMap(document -> ElementPath.resolve(document, path))
                .map(object -> region(object, feature));
    }

    private TextRegion region(EObject object, EStructuralFeature feature) {
        boolean known = feature != null && object.eClass().getEAllStructuralFeatures().contains(feature);
        return content.positions().closest(object, known ? feature : null);
    }
}
