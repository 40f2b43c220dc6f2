/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferrule.quantity.QuantityWarning.Code;

/**
 * A gauge pressure as printed, such as {@code 14 atm} or {@code 12 atm / 1216 kPa}, of which the first statement
 * counts; keeps its text. Reads atm, bar, kPa, MPa, psi and mmHg, independent of the locale. Equal if the texts are
 * equal.
 */
public final class Pressure {
    /** Lowest inflation that a label states, about; common practice. */
    private static final BigDecimal LEAST_PLAUSIBLE_ATM = new BigDecimal("0.5");
    /** Above the rating of very-high-pressure balloons; common practice. */
    private static final BigDecimal MOST_PLAUSIBLE_ATM = new BigDecimal("50");

    private final String text;
    private final List<PressureGrammar.Figure> figures;
    private final QuantitySyntaxException problem;

    private Pressure(String text, List<PressureGrammar.Figure> figures, QuantitySyntaxException problem) {
        this.text = text;
        this.figures = figures;
        this.problem = problem;
    }

    /**
     * Reads a pressure.
     *
     * @throws QuantitySyntaxException if the text is not one; among others a bare number or a decimal comma
     */
    public static Pressure parse(String text) {
        return new Pressure(text, PressureGrammar.parse(text), null);
    }

    /** Reads a pressure and keeps a text that cannot be read, with its problem. */
    public static Pressure lenient(String text) {
        try {
            return parse(text);
        } catch (QuantitySyntaxException e) {
            return new Pressure(text, List.of(), e);
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
     * Returns the pressure in pascals; exact but for psi, see {@link PressureUnit#pascals()}.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public BigDecimal pascals() {
        return main().base();
    }

    /**
     * Returns the unit of the first figure.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public PressureUnit unit() {
        return main().unit();
    }

    /**
     * Returns the nearest double number of units.
     *
     * @throws IllegalStateException if the text is not readable
     */
    public double in(PressureUnit unit) {
        return pascals().doubleValue() / unit.pascals().doubleValue();
    }

    /**
     * Returns what is doubtful: an inflation below 0.5 atm or above 50 atm, and second statements that differ from the
     * first by more than rounding. Empty for an unreadable text, which has a problem instead.
     */
    public List<QuantityWarning> warnings() {
        List<QuantityWarning> warnings = new ArrayList<>();
        if (readable()) {
            implausible().ifPresent(warnings::add);
            figures.stream().skip(1).filter(other -> !main().agreesWith(other)).map(this::disagreement)
                    .forEach(warnings::add);
        }
        return List.copyOf(warnings);
    }

    private Optional<QuantityWarning> implausible() {
        if (pascals().compareTo(pascals(LEAST_PLAUSIBLE_ATM)) < 0) {
            return Optional.of(implausible(Code.IMPLAUSIBLY_SMALL, LEAST_PLAUSIBLE_ATM));
        }
        return pascals().compareTo(pascals(MOST_PLAUSIBLE_ATM)) > 0
                ? Optional.of(implausible(Code.IMPLAUSIBLY_LARGE, MOST_PLAUSIBLE_ATM)) : Optional.empty();
    }

    private QuantityWarning implausible(Code code, BigDecimal boundAtm) {
        List<String> arguments = List.of(main().label(), boundAtm.toPlainString() + " atm", "");
        return new QuantityWarning(code, main().start(), main().end(), arguments);
    }

    private static BigDecimal pascals(BigDecimal atm) {
        return atm.multiply(PressureUnit.ATMOSPHERE.pascals());
    }

    private QuantityWarning disagreement(PressureGrammar.Figure other) {
        return new QuantityWarning(Code.STATEMENTS_DISAGREE, other.start(), other.end(),
                List.of(main().label(), other.label()));
    }

    private PressureGrammar.Figure main() {
        if (!readable()) {
            throw new IllegalStateException(problem.getMessage(), problem);
        }
        return figures.get(0);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pressure pressure && text.equals(pressure.text);
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
