/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * What one statement of a dimension says: the figures as printed, every one with its unit, and the ends and centre
 * that follow from them.
 */
sealed interface Statement {

    /** Returns the first printed figure. */
    Figure first();

    /** Returns the printed figures that a second statement is compared with, in order. */
    List<Figure> figures();

    /** Returns the printed figures that are values of the part itself, not widths such as a tolerance. */
    default List<Figure> values() {
        return List.of(first());
    }

    /** Returns the meaning, given the word that stands beside the figures (STATED for none). */
    Meaning meaning(Meaning word);

    /** Returns the ends and the centre, given the meaning. */
    Interval interval(Meaning meaning);

    /** Returns the sample, if this is one. */
    default Optional<Sample> sample() {
        return Optional.empty();
    }

    /** Tells whether another statement says the same within its rounding. */
    default boolean agreesWith(Statement second) {
        List<Figure> own = figures();
        List<Figure> others = second.figures();
        return own.size() == others.size()
                && IntStream.range(0, own.size()).allMatch(i -> own.get(i).agreesWith(others.get(i)));
    }

    /** Tells whether the word may stand beside such figures. */
    boolean allows(Meaning word);

    /** Low end, centre and high end, each only where it is stated. */
    record Interval(Optional<Length> low, Optional<Length> centre, Optional<Length> high) {
        static Interval all(Length low, Length centre, Length high) {
            return new Interval(Optional.of(low), Optional.of(centre), Optional.of(high));
        }
    }

    /** One figure. */
    record Single(Figure first) implements Statement {
        @Override
        public List<Figure> figures() {
            return List.of(first);
        }

        @Override
        public Meaning meaning(Meaning word) {
            return word;
        }

        @Override
        public boolean allows(Meaning word) {
            return true;
        }

        @Override
        public Interval interval(Meaning meaning) {
            Optional<Length> value = Optional.of(first.length());
            return switch (meaning) {
                case MINIMUM -> new Interval(value, Optional.empty(), Optional.empty());
                case MAXIMUM -> new Interval(Optional.empty(), Optional.empty(), value);
                default -> new Interval(Optional.empty(), value, Optional.empty());
            };
        }
    }

    /** A figure with tolerances above and below. */
    record Toleranced(Figure first, Figure above, Figure below) implements Statement {
        @Override
        public List<Figure> figures() {
            return List.of(first, above, below);
        }

        @Override
        public Meaning meaning(Meaning word) {
            return word;
        }

        @Override
        public boolean allows(Meaning word) {
            return word == Meaning.STATED || word == Meaning.NOMINAL || word == Meaning.MEASURED;
        }

        @Override
        public Interval interval(Meaning meaning) {
            Length centre = first.length();
            return Interval.all(centre.minus(below.length()), centre, centre.plus(above.length()));
        }
    }

    /** Two ends. */
    record Ranged(Figure first, Figure last) implements Statement {
        @Override
        public List<Figure> figures() {
            return List.of(first, last);
        }

        @Override
        public List<Figure> values() {
            return figures();
        }

        @Override
        public Meaning meaning(Meaning word) {
            return Meaning.RANGE;
        }

        @Override
        public boolean allows(Meaning word) {
            return word == Meaning.STATED;
        }

        @Override
        public Interval interval(Meaning meaning) {
            return new Interval(Optional.of(first.length()), Optional.empty(), Optional.of(last.length()));
        }
    }

    /** A mean, a standard deviation and perhaps the number of specimens. */
    record Sampled(Figure first, Figure deviation, OptionalInt n) implements Statement {
        @Override
        public List<Figure> figures() {
            return List.of(first, deviation);
        }

        @Override
        public Meaning meaning(Meaning word) {
            return Meaning.SAMPLE;
        }

        @Override
        public boolean allows(Meaning word) {
            return word == Meaning.STATED || word == Meaning.MEASURED;
        }

        @Override
        public Interval interval(Meaning meaning) {
            return new Interval(Optional.empty(), Optional.of(first.length()), Optional.empty());
        }

        @Override
        public Optional<Sample> sample() {
            return Optional.of(new Sample(first.length(), deviation.length(), n));
        }
    }
}
