/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.Objects;

/**
 * A document that a chart rests on.
 *
 * @param title of the document
 * @param revision of the document; may be empty
 */
public record Edition(String title, String revision) {

    public Edition {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(revision, "revision");
    }
}
