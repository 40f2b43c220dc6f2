/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The keys under which documents refer to other files. */
public final class FileReferences {

    private static final String FILE = "file ";

    private FileReferences() {
    }

    /** Returns the ending of the file names that a feature refers to; nothing if it refers to no files. */
    public static Optional<String> suffix(EStructuralFeature feature) {
        return Features.annotation(feature, "refers").filter(target -> target.startsWith(FILE))
                .map(target -> target.substring(FILE.length()));
    }

    /** Returns the features of a kind of document that refer to files, with the ending of the file names. */
    public static Map<EAttribute, String> features(EClass document) {
        Map<EAttribute, String> features = new LinkedHashMap<>();
        document.getEAllAttributes().forEach(a -> suffix(a).ifPresent(suffix -> features.put(a, suffix)));
        return features;
    }

    /** Returns the paths that stand in a document, relative to it. */
    public static List<String> of(Document document) {
        List<String> paths = new ArrayList<>();
        for (EAttribute feature : features(document.eClass()).keySet()) {
            if (document.eGet(feature) instanceof List<?> several) {
                several.forEach(path -> paths.add((String) path));
            } else if (document.eIsSet(feature)) {
                paths.add((String) document.eGet(feature));
            }
        }
        return paths;
    }
}
