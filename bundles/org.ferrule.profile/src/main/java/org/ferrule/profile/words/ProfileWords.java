/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.words;

import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

import org.ferrule.chart.words.LengthWords;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.figure.Figure;
import org.ferrule.profile.Landmark;
import org.ferrule.profile.curve.Curve;
import org.ferrule.profile.curve.Mark;
import org.ferrule.profile.curve.Reading;
import org.ferrule.profile.table.Differences;
import org.ferrule.profile.table.Quantity;
import org.ferrule.profile.table.StiffnessJump;
import org.ferrule.profile.table.Value;
import org.ferrule.quantity.Length;

/** Words for landmarks, quantities, values and readings of a comparison. */
public final class ProfileWords {
    private final Phrases phrases;
    private final LengthWords lengths;

    private ProfileWords(Phrases phrases, LengthWords lengths) {
        this.phrases = phrases;
        this.lengths = lengths;
    }

    /** English words with lengths in these units. */
    public static ProfileWords english(UnitPreferences units) {
        return new ProfileWords(Phrases.beside(ProfileWords.class, "profile"),
                new LengthWords(Objects.requireNonNull(units, "units")));
    }

    /** The templates in use. */
    public Phrases phrases() {
        return phrases;
    }

    /** How lengths are written. */
    public LengthWords lengths() {
        return lengths;
    }

    /** The letter by which a device of a comparison goes: A for the first. */
    public static String letter(int device) {
        return String.valueOf((char) ('A' + device));
    }

    /** The sign by which a lumen of a comparison goes: L1 for the first. */
    public static String lineSign(int line) {
        return "L" + (line + 1);
    }

    /** A landmark as a choice, such as "marker 2". */
    public String landmark(Landmark landmark) {
        return phrases.fill("landmark." + landmark.kind(), Integer.toString(landmark.number()));
    }

    /** A landmark as something to count from, such as "the distal tip". */
    public String from(Landmark landmark) {
        return phrases.fill("landmark.from." + landmark.kind(), Integer.toString(landmark.number()));
    }

    /** The name of a row of the table of differences. */
    public String quantity(Quantity quantity) {
        return phrases.get("quantity." + quantity);
    }

    /** A section, also one without a name. */
    public String section(String name) {
        return name.isEmpty() ? phrases.get("value.unnamed") : name;
    }

    /** A mark on a device. */
    public String mark(Mark mark) {
        return phrases.fill("mark." + mark.kind(), mark.kind() == Mark.Kind.RIGID ? section(mark.name()) : mark.name());
    }

    /** A value of the table of differences. */
    public String value(Value value) {
        if (value instanceof Value.Outer outer) {
            String text = outer(outer.figure(), outer.assumed());
            return outer.at().map(at -> phrases.fill("value.at", text, lengths.length(at))).orElse(text);
        }
        if (value instanceof Value.Inner inner) {
            return inner(inner.figure(), inner.assumed());
        }
        if (value instanceof Value.Left left) {
            return phrases.fill("value.left", lengths.clearance(left.clearance().nominal()),
                    lengths.clearance(left.clearance().worst()));
        }
        if (value instanceof Value.Distance distance) {
            return lengths.length(distance.length());
        }
        return value instanceof Value.Steps steps ? steps(steps)
                : phrases.get(value instanceof Value.NotKnown ? "value.unknown" : "value.none");
    }

    private String steps(Value.Steps steps) {
        if (steps.steps().isEmpty()) {
            return phrases.get(steps.complete() ? "value.noSteps" : "value.noStepsKnown");
        }
        String text = steps.steps().stream().map(this::step).collect(Collectors.joining("; "));
        return steps.complete() ? text : phrases.fill("value.stepsPartly", text);
    }

    private String step(StiffnessJump step) {
        return phrases.fill("value.step", section(step.distal()), section(step.proximal()),
                String.format(Locale.ROOT, "%.1f", step.factor()), lengths.length(step.at()));
    }

    /** An outer diameter with its interval, rounded up, its lower end down. */
    public String outer(Figure figure, boolean assumed) {
        return interval(lengths.device(figure.centre()), figure, assumed);
    }

    /** An inner diameter with its interval, rounded down, its upper end up. */
    public String inner(Figure figure, boolean assumed) {
        return interval(lengths.lumen(figure.centre()), figure, assumed);
    }

    private String interval(String centre, Figure figure, boolean assumed) {
        if (figure.low().equals(figure.high())) {
            return assumed ? phrases.fill("value.exactAssumed", centre) : centre;
        }
        return phrases.fill(assumed ? "value.assumed" : "value.interval", centre, lengths.lowEnd(figure.low()),
                lengths.highEnd(figure.high()));
    }

    /** What a curve says of a station. */
    public String reading(Reading reading, Curve.Kind kind) {
        if (reading instanceof Reading.Known known) {
            return kind == Curve.Kind.INNER ? inner(known.figure(), known.assumed())
                    : outer(known.figure(), known.assumed());
        }
        return phrases.get(reading instanceof Reading.Unknown ? "value.unknown" : "value.beyond");
    }

    /** A station as the place that it is from a landmark. */
    public String station(Length station, Landmark landmark) {
        String from = from(landmark);
        if (station.equals(Length.ZERO)) {
            return phrases.fill("passage.here", from);
        }
        return phrases.fill(station.isNegative() ? "passage.distal" : "passage.proximal", along(station.abs()), from);
    }

    /** A distance along a device: centimetres, below 1 cm millimetres. */
    public String along(Length length) {
        return lengths.length(length);
    }

    /** By how much the values of a row differ, if that can be told. */
    public String spread(Differences.Row row) {
        boolean along = row.values().stream().anyMatch(Value.Distance.class::isInstance);
        return row.spread().map(spread -> along ? lengths.length(spread) : lengths.plain(spread))
                .orElse(phrases.get("value.none"));
    }
}
