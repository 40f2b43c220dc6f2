/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.util.Optional;

import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Reads the Ecore's annotations that are our own. */
final class Annotations {

    private static final String SOURCE = "https://ferrule.invalid/annotation/1";

    private Annotations() {
    }

    static Optional<String> label(EModelElement element) {
        return get(element, "label");
    }

    static Optional<String> get(EModelElement element, String key) {
        return Optional.ofNullable(EcoreUtil.getAnnotation(element, SOURCE, key));
    }
}
