/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.limits;

import java.util.Objects;

/**
 * A published limit or score beside what a case states.
 *
 * @param kind what it is about
 * @param text in words, with its figures
 * @param source where it was published, and how that is known; empty where nothing was worked out
 * @param reached whether what was used by now has reached it
 */
public record CaseLimit(Kind kind, String text, String source, boolean reached) {

    /** What limits are about. */
    public enum Kind {
        /** Kidney and contrast medium. */
        CONTRAST,
        /** Radiation. */
        DOSE,
        /** The lesion. */
        LESION
    }

    public CaseLimit {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(source, "source");
    }

    /** Text and source in one line. */
    public String line() {
        return source.isEmpty() ? text : text + " \u2013 " + source;
    }
}
