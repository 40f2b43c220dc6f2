/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.Objects;

import org.ferrule.model.DocumentKind;
import org.ferrule.model.ElementPath;

/**
 * Something in a case, its techniques or its shelf that cannot be planned with as it is written.
 *
 * @param document which of the documents
 * @param path of the element in it, as {@link ElementPath} writes it; empty for the document itself
 * @param feature the key of the element; empty where the whole element is meant
 * @param message for people
 */
public record PlanProblem(DocumentKind document, String path, String feature, String message) {
    public PlanProblem {
        Objects.requireNonNull(document, "document");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(message, "message");
    }
}
