/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import org.ferrule.quantity.Token.Kind;

/** A signed position as typed, such as {@code -0.2 mm}; keeps its text. Equal if the texts are equal. */
public final class Offset {
    private final String text;
    private final boolean negative;
    private final Figure size;
    private final QuantitySyntaxException problem;

    private Offset(String text, boolean negative, Figure size, QuantitySyntaxException problem) {
        this.text = text;
        this.negative = negative;
        this.size = size;
        this.problem = problem;
    }

    /**
     * Reads an optional sign, a number and a unit.
     *
     * @throws QuantitySyntaxException if the text is anything else
     */
    public static Offset parse(String text) {
        TokenReader reader = new TokenReader(text);
        boolean negative = reader.accept(Kind.MINUS);
        if (!negative) {
            reader.accept(Kind.PLUS);
        }
        Figure size = new FigureReader(reader).figureWithUnit();
        reader.expect(Kind.END, "the end of the offset");
        return new Offset(text, negative, size, null);
    }

    /** Reads an offset and keeps a text that cannot be read, with its problem. */
    public static Offset lenient(String text) {
        try {
            return parse(text);
        } catch (QuantitySyntaxException e) {
            return new Offset(text, false, null, e);
        }
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
        requireReadable();
        return negative ? size.length().negated() : size.length();
    }

    /**
     * Returns the unit of the number.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public LengthUnit unit() {
        requireReadable();
        return size.unit();
    }

    /**
     * Returns what the last printed digit stands for: 0.01 mm for {@code -0.10 mm}.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public Length lastPlace() {
        requireReadable();
        return Length.of(BigDecimal.ONE.movePointLeft(decimals()), size.unit());
    }

    private int decimals() {
        return Math.max(0, size.value().scale());
    }

    /**
     * Returns this offset with another value, in the same unit and, where they hold it exactly, with the same decimals.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public Offset movedTo(Length length) {
        if (length.equals(value())) {
            return this;
        }
        BigDecimal number = length.in(size.unit(), decimals(), RoundingMode.HALF_EVEN);
        boolean exact = Length.of(number, size.unit()).equals(length);
        return parse((exact ? number.toPlainString() : LengthFormat.faithful(size.unit()).number(length))
                + text.substring(size.end()));
    }

    private void requireReadable() {
        if (!readable()) {
            throw new IllegalStateException(problem.getMessage(), problem);
        }
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
