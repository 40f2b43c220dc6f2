/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.verdict;

/** The answer to "does it pass?", best first. */
public enum Verdict {
    FITS("fits"), TIGHT("tight"), UNKNOWN("unknown"), BLOCKED("blocked");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word for it, as documents and screens write it. */
    public String word() {
        return word;
    }

    /** The worse of two: a known block beats an unknown, an unknown beats a tight. */
    public Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
