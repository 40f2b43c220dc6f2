/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.help;

import java.net.URL;
import java.util.Set;

/**
 * A page of the help.
 *
 * @param id the bundle and the path of the page in it, such as {@code org.ferrule.ui/help/start.html}
 * @param title what stands in the contents
 * @param order a number by which pages are sorted
 * @param parts the ids of the editors and views that it explains
 * @param location where its text is
 */
public record HelpPage(String id, String title, int order, Set<String> parts, URL location) {

    /** Copies the set. */
    public HelpPage {
        parts = Set.copyOf(parts);
    }
}
