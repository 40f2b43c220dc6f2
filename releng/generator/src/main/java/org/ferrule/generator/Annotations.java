/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Reads the Ecore's annotations that are our own. */
final class Annotations {

    private static final String SOURCE = "https://ferrule.invalid/annotation/1";

    private Annotations() {
    }

    /** Returns the label that the Ecore gives, otherwise the name as a phrase. */
    static String label(ENamedElement element) {
        return get(element, "label").orElseGet(() -> phrase(element.getName()));
    }

    static Optional<String> get(EModelElement element, String key) {
        return Optional.ofNullable(EcoreUtil.getAnnotation(element, SOURCE, key));
    }

    private static String phrase(String name) {
        String words = name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
