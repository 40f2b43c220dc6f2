/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferrule.quantity.DimensionGrammar.Passage;
import org.ferrule.quantity.QuantityWarning.Code;
import org.ferrule.quantity.Statement.Interval;

/**
 * A length or diameter as printed on a label, which keeps its text. Reads {@code 0.070 in min}, {@code 2.6F max},
 * {@code 1.02 mm ±0.03}, {@code 1.02 mm +0.02/-0.01}, {@code 0.88..0.94 mm}, {@code 1.015 mm sd 0.008 n 12},
 * {@code 1.78 mm nom}, {@code 1.02 mm measured} and second statements such as {@code 0.070 in (1.78 mm)}, of which
 * the first counts. Reading does not depend on the locale. Equal if the texts are equal.
 */
public final class Dimension {
    private final String text;
    private final DimensionGrammar.Result result;
    private final QuantitySyntaxException problem;
    // made once, since solvers ask for them again and again
    private final Optional<Interval> interval;
    private final Length label;

    private Dimension(String text, DimensionGrammar.Result result, QuantitySyntaxException problem) {
        this.text = text;
        this.result = result;
        this.problem = problem;
        this.interval = readable() ? Optional.of(statement().interval(result.word())) : Optional.empty();
        this.label = readable() ? statement().first().length() : null;
    }

    /**
     * Reads a dimension.
     *
     * @throws QuantitySyntaxException if the text is not one; among others a bare number, a gauge, a decimal comma, a
     *         negative figure, a reversed range, or a tolerance larger than its figure
     */
    public static Dimension parse(String text) {
        return new Dimension(text, DimensionGrammar.parse(text), null);
    }

    /** Reads a dimension and keeps a text that cannot be read, with its problem. */
    public static Dimension lenient(String text) {
        try {
            return parse(text);
        } catch (QuantitySyntaxException e) {
            return new Dimension(text, null, e);
        }
    }

    /**
     * Returns a plain dimension of this length, written in the unit with as few decimals as are exact.
     *
     * @throws QuantitySyntaxException if the length is negative or 1000 m and more
     */
    public static Dimension of(Length length, LengthUnit unit) {
        return parse(LengthFormat.faithful(unit).format(length));
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
     * Returns what the text says about the part.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public Meaning meaning() {
        return statement().meaning(result.word());
    }

    /**
     * Returns the unit of the first figure.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public LengthUnit unit() {
        return statement().first().unit();
    }

    /** Returns the lower end if the text itself states one: with min, a tolerance or a range. */
    public Optional<Length> low() {
        return interval.flatMap(Interval::low);
    }

    /** Returns the centre if the text itself states one: not with min, max or a range. */
    public Optional<Length> centre() {
        return interval.flatMap(Interval::centre);
    }

    /** Returns the upper end if the text itself states one: with max, a tolerance or a range. */
    public Optional<Length> high() {
        return interval.flatMap(Interval::high);
    }

    /** Returns the sample if the text states a standard deviation. */
    public Optional<Sample> sample() {
        return readable() ? statement().sample() : Optional.empty();
    }

    /**
     * Returns the printed figure that is used where one label is compared with another: the figure itself, the low
     * end of a range, the mean of a sample.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public Length label() {
        requireReadable();
        return label;
    }

    /**
     * Returns what is doubtful about the dimension as a figure of this kind: implausible values, and second
     * statements that do not agree with the first. Empty for an unreadable text, which has a problem instead.
     */
    public List<QuantityWarning> warnings(FigureKind kind) {
        List<QuantityWarning> warnings = new ArrayList<>();
        if (readable()) {
            Plausibility.check(statement(), kind).forEach(warnings::add);
            result.passages().stream().skip(1).filter(other -> !statement().agreesWith(other.statement()))
                    .map(this::disagreement).forEach(warnings::add);
        }
        return List.copyOf(warnings);
    }

    /**
     * Returns what the last printed digit of the figure stands for: 0.01 mm for {@code 0.70 mm max}.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public Length lastPlace() {
        Figure first = statement().first();
        return Length.of(BigDecimal.ONE.movePointLeft(Math.max(0, first.value().scale())), first.unit());
    }

    /**
     * Returns this dimension with its figure moved, and everything else as typed: unit, meaning, tolerance, deviation
     * and, where they hold the figure exactly, the decimals. The upper end of a range moves by as much, a second
     * statement too, within its own decimals.
     *
     * @param length the new label
     * @throws QuantitySyntaxException if there is no such dimension: a negative length, or one smaller than its
     *         tolerance
     * @throws IllegalStateException if the text is not readable
     */
    public Dimension movedTo(Length length) {
        requireReadable();
        return length.equals(label) ? this : parse(Moving.move(text, result.passages(), length));
    }

    private QuantityWarning disagreement(Passage other) {
        List<String> arguments = List.of(text.substring(main().start(), main().end()),
                text.substring(other.start(), other.end()));
        return new QuantityWarning(Code.STATEMENTS_DISAGREE, other.start(), other.end(), arguments);
    }

    private Statement statement() {
        return main().statement();
    }

    private Passage main() {
        requireReadable();
        return result.passages().get(0);
    }

    private void requireReadable() {
        if (!readable()) {
            throw new IllegalStateException(problem.getMessage(), problem);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Dimension dimension && text.equals(dimension.text);
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
