/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.List;

/**
 * Pages and what is to be known about them.
 *
 * @param info title, author, language, time
 * @param pages at least one page; they may differ in size
 */
public record Document(DocumentInfo info, List<Picture> pages) {

    public Document {
        pages = List.copyOf(pages);
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("A document needs at least one page");
        }
    }
}
