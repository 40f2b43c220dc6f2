/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.Optional;
import org.ferrule.quantity.Token.Kind;

/** A signed position as typed, such as {@code -0.2 mm}; keeps its text. Equal if the texts are equal. */
public final class Offset {
    private final String text;
    private final Length value;
    private final QuantitySyntaxException problem;

    private Offset(String text, Length value, QuantitySyntaxException problem) {
        this.text = text;
        this.value = value;
        this.problem = problem;
    }

    /**
     * Reads an optional sign, a number and a unit.
     *
     * @throws QuantitySyntaxException if the text is anything else
     */
    public static Offset parse(String text) {
        return new Offset(text, read(text), null);
    }

    /** Reads an offset and keeps a text that cannot be read, with its problem. */
    public static Offset lenient(String text) {
        try {
            return parse(text);
        } catch (QuantitySyntaxException e) {
            return new Offset(text, null, e);
        }
    }

    private static Length read(String text) {
        TokenReader reader = new TokenReader(text);
        boolean negative = reader.accept(Kind.MINUS);
        if (!negative) {
            reader.accept(Kind.PLUS);
        }
        Length size = new FigureReader(reader).figureWithUnit().length();
        reader.expect(Kind.END, "the end of the offset");
        return negative ? size.negated() : size;
    }

    /** Returns the text as typed. */
    public String text() {
        return text;
    }

    /** Tells whether the text was understood. */
    public boolean readable() {
        return problem == null;
    }

    /** Returns why the text was not understood. */
    public Optional<QuantitySyntaxException> problem() {
        return Optional.ofNullable(problem);
    }

    /**
     * Returns the signed length.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public Length value() {
        if (!readable()) {
            throw new IllegalStateException(problem.getMessage(), problem);
        }
        return value;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Offset offset && text.equals(offset.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /** Returns the text as typed. */
    @Override
    public String toString() {
        return text;
    }
}
