/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** A reference names no device, no lumen, or several. The message says what was meant to be found. */
public class ReferenceException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int SUGGESTIONS = 3;

    public ReferenceException(String message) {
        super(message);
    }

    static ReferenceException notFound(String reference, List<CataloguedDevice> devices) {
        String near = devices.stream().map(d -> d.device().id())
                .sorted(Comparator.comparingInt((String id) -> distance(id, reference)).thenComparing(id -> id))
                .limit(SUGGESTIONS).collect(Collectors.joining(", "));
        return new ReferenceException("no device is called \"" + reference + "\""
                + (near.isEmpty() ? "" : "; the nearest are " + near));
    }

    static ReferenceException ambiguous(String reference, List<CataloguedDevice> found) {
        return new ReferenceException("\"" + reference + "\" names several devices; write "
                + found.stream().map(d -> d.library() + "!" + d.device().id()).collect(Collectors.joining(" or ")));
    }

    /** Edit distance, row by row. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int substituted = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(substituted, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
