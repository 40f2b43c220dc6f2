/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import java.util.Objects;

/**
 * Where a figure or a statement was read.
 *
 * @param title of the source, empty when none is named
 * @param revision of the source, may be empty
 * @param page in the source, may be empty
 */
public record SourceRef(String title, String revision, String page) {

    /** No source is named. */
    public static final SourceRef NONE = new SourceRef("", "", "");

    public SourceRef {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(revision, "revision");
        Objects.requireNonNull(page, "page");
    }

    /** Whether no source is named. */
    public boolean isNone() {
        return title.isEmpty();
    }

    /** Returns the words for where something stands in a source: a number is that of a page, other words are kept. */
    public static String place(String page) {
        return !page.isEmpty() && Character.isDigit(page.charAt(0)) ? "p. " + page : page;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(title);
        if (!revision.isEmpty()) {
            text.append(", rev. ").append(revision);
        }
        if (!page.isEmpty()) {
            text.append(", ").append(place(page));
        }
        return text.toString();
    }
}
