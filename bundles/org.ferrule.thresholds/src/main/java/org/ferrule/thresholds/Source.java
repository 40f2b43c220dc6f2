/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds;

/**
 * Where a figure comes from.
 *
 * @param citation the publication, or {@code common practice}
 * @param mark how it is known
 */
public record Source(String citation, Mark mark) {

    /** How a figure is known. */
    public enum Mark {
        /** Read in the source. */
        SEEN("seen"),
        /** The source was not at hand. */
        FROM_MEMORY("from memory"),
        /** Usual, without a publication. */
        COMMON_PRACTICE("common practice"),
        /** Chosen by whoever uses the program. */
        OWN("own setting");

        private final String words;

        Mark(String words) {
            this.words = words;
        }

        /** Returns the mark in words, such as {@code from memory}. */
        public String words() {
            return words;
        }
    }

    /**
     * Checks that there is a citation.
     *
     * @throws IllegalArgumentException if it is blank
     */
    public Source {
        if (citation.isBlank()) {
            throw new IllegalArgumentException("a figure without a source");
        }
    }

    /** What was read in its source. */
    public static Source seen(String citation) {
        return new Source(citation, Mark.SEEN);
    }

    /** What is cited from memory. */
    public static Source fromMemory(String citation) {
        return new Source(citation, Mark.FROM_MEMORY);
    }

    /** What is usual. */
    public static Source commonPractice() {
        return new Source(Mark.COMMON_PRACTICE.words(), Mark.COMMON_PRACTICE);
    }
}
