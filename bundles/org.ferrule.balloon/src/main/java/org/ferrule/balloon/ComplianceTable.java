/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.balloon;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

import org.ferrule.balloon.Inflation.Point;
import org.ferrule.balloon.Inflation.Refusal;
import org.ferrule.balloon.Inflation.Refused;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Pressure;

/**
 * A balloon's printed table of pressures and diameters. Between two rows the diameter is taken to grow in a straight
 * line, as it does between 2 and 10 atm (Am J Cardiol 1986;57:26); below the first row, above the last one and beyond
 * the rated burst pressure there is no answer, only a refusal that says why. Rows may stand above the rated burst
 * pressure, as some tables print them; they are not read.
 */
public final class ComplianceTable {
    private static final MathContext DOWN = new MathContext(34, RoundingMode.FLOOR);

    private final List<Row> rows;
    private final Optional<Pressure> ratedBurst;

    /**
     * A row as printed.
     *
     * @param pressure a readable pressure
     * @param diameter a readable dimension, of which the printed figure counts
     */
    public record Row(Pressure pressure, Dimension diameter) {

        /**
         * Checks that both can be read.
         *
         * @throws IllegalArgumentException naming the text that cannot
         */
        public Row {
            requireReadable(pressure);
            if (!diameter.readable()) {
                throw new IllegalArgumentException("not a diameter: \"" + diameter.text() + "\"");
            }
        }

        private BigDecimal pascals() {
            return pressure.pascals();
        }

        @Override
        public String toString() {
            return pressure + " -> " + diameter;
        }
    }

    /**
     * Creates a table.
     *
     * @param rows one or more, with rising pressures and diameters that do not fall
     * @param ratedBurst the rated burst pressure, if it is known
     * @throws IllegalArgumentException if there is no row, or naming the two rows that are out of order, or the rated
     *         burst pressure if it cannot be read
     */
    public ComplianceTable(List<Row> rows, Optional<Pressure> ratedBurst) {
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a table needs at least one row");
        }
        ratedBurst.ifPresent(ComplianceTable::requireReadable);
        for (int i = 1; i < rows.size(); i++) {
            checkOrder(rows.get(i - 1), rows.get(i), i);
        }
        this.rows = List.copyOf(rows);
        this.ratedBurst = ratedBurst;
    }

    private static void requireReadable(Pressure pressure) {
        if (!pressure.readable()) {
            throw new IllegalArgumentException("not a pressure: \"" + pressure.text() + "\"");
        }
    }

    private static void checkOrder(Row lower, Row upper, int number) {
        if (lower.pascals().compareTo(upper.pascals()) >= 0) {
            throw new IllegalArgumentException("pressures must rise: row " + number + " (" + lower + "), row "
                    + (number + 1) + " (" + upper + ")");
        }
        if (lower.diameter().label().compareTo(upper.diameter().label()) > 0) {
            throw new IllegalArgumentException("diameters must not fall: row " + number + " (" + lower + "), row "
                    + (number + 1) + " (" + upper + ")");
        }
    }

    /** Returns the rows as printed. */
    public List<Row> rows() {
        return rows;
    }

    /** Returns the rated burst pressure. */
    public Optional<Pressure> ratedBurst() {
        return ratedBurst;
    }

    /**
     * Returns the diameter at a pressure, rounded up.
     *
     * @throws IllegalArgumentException if the pressure cannot be read
     */
    public Inflation diameterAt(Pressure pressure) {
        requireReadable(pressure);
        BigDecimal asked = pressure.pascals();
        if (isBeyondRated(asked)) {
            return beyondRated(pressure.text());
        }
        if (asked.compareTo(first().pascals()) < 0) {
            return new Refused(Refusal.BELOW_TABLE, pressure.text(), first().pressure().text());
        }
        if (asked.compareTo(last().pascals()) > 0) {
            return new Refused(Refusal.ABOVE_TABLE, pressure.text(), last().pressure().text());
        }
        Row upper = rows.stream().filter(row -> row.pascals().compareTo(asked) >= 0).findFirst().orElseThrow();
        return new Point(asked, diameter(before(upper), upper, asked));
    }

    /**
     * Returns the lowest pressure that gives a diameter, rounded down, so that the balloon is not larger than asked.
     */
    public Inflation pressureFor(Length diameter) {
        if (diameter.compareTo(first().diameter().label()) < 0) {
            return new Refused(Refusal.BELOW_TABLE, diameter.toString(), first().diameter().text());
        }
        Optional<Row> upper = rows.stream().filter(row -> row.diameter().label().compareTo(diameter) >= 0).findFirst();
        if (upper.isEmpty()) {
            boolean rated = isBeyondRated(last().pascals());
            return rated ? beyondRated(diameter.toString())
                    : new Refused(Refusal.ABOVE_TABLE, diameter.toString(), last().diameter().text());
        }
        BigDecimal pascals = pascals(before(upper.get()), upper.get(), diameter);
        return isBeyondRated(pascals) ? beyondRated(diameter.toString()) : new Point(pascals, diameter);
    }

    private boolean isBeyondRated(BigDecimal pascals) {
        return ratedBurst.isPresent() && pascals.compareTo(ratedBurst.get().pascals()) > 0;
    }

    private Refused beyondRated(String asked) {
        return new Refused(Refusal.BEYOND_RATED_BURST, asked, ratedBurst.orElseThrow().text());
    }

    private Row first() {
        return rows.get(0);
    }

    private Row last() {
        return rows.get(rows.size() - 1);
    }

    private Row before(Row row) {
        return rows.get(Math.max(0, rows.indexOf(row) - 1));
    }

    private static Length diameter(Row lower, Row upper, BigDecimal pascals) {
        BigDecimal range = upper.pascals().subtract(lower.pascals());
        if (range.signum() == 0) {
            return upper.diameter().label();
        }
        Length growth = upper.diameter().label().minus(lower.diameter().label());
        BigDecimal part = pascals.subtract(lower.pascals()).multiply(BigDecimal.valueOf(growth.thirdNanometres()))
                .divide(range, 0, RoundingMode.CEILING);
        return lower.diameter().label().plus(new Length(part.longValueExact()));
    }

    private static BigDecimal pascals(Row lower, Row upper, Length diameter) {
        if (upper.diameter().label().equals(diameter)) {
            return upper.pascals();
        }
        BigInteger part = difference(diameter, lower.diameter().label());
        BigInteger growth = difference(upper.diameter().label(), lower.diameter().label());
        BigDecimal range = upper.pascals().subtract(lower.pascals());
        return lower.pascals().add(range.multiply(new BigDecimal(part)).divide(new BigDecimal(growth), DOWN), DOWN);
    }

    private static BigInteger difference(Length larger, Length smaller) {
        return BigInteger.valueOf(larger.minus(smaller).thirdNanometres());
    }
}
