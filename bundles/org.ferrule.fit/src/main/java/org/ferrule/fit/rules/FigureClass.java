/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.rules;

/** The classes of figures that a rule set has spans for. */
public enum FigureClass {
    INNER_DIAMETER("inner diameter"), OUTER_DIAMETER("outer diameter"), CROSSING_PROFILE("crossing profile"),
    WIRE_DIAMETER("wire diameter");

    private final String word;

    FigureClass(String word) {
        this.word = word;
    }

    /** The word for it, as documents and screens write it. */
    public String word() {
        return word;
    }

    /**
     * The class that a document names.
     *
     * @throws IllegalArgumentException naming the word when no class bears it
     */
    public static FigureClass ofWord(String word) {
        for (FigureClass figure : values()) {
            if (figure.word.equals(word)) {
                return figure;
            }
        }
        throw new IllegalArgumentException("no class of figures is called \"" + word + "\"");
    }
}
