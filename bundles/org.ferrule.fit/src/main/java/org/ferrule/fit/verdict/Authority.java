/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.verdict;

/** On what a verdict rests, strongest first. */
public enum Authority {
    CLAIM("claim"), BENCH("bench"), GEOMETRY("geometry");

    private final String word;

    Authority(String word) {
        this.word = word;
    }

    /** The word for it, as documents and screens write it. */
    public String word() {
        return word;
    }
}
