/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.growth;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.balloon.Inflation.Point;
import org.ferrule.chart.words.Phrases;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Pressure;

/** Words for growth curves. */
public final class GrowthWords {
    private final GrowthComparison growth;
    private final ProfileWords words;

    /** Words for these curves. */
    public GrowthWords(GrowthComparison growth, ProfileWords words) {
        this.growth = growth;
        this.words = words;
    }

    Phrases phrases() {
        return words.phrases();
    }

    /** A balloon: its letter and its name. */
    public String balloon(int number) {
        return ProfileWords.letter(number) + " " + growth.balloons().get(number).name();
    }

    /** Why a balloon has no curve; empty when it has one. */
    public Optional<String> refusal(int number) {
        BalloonGrowth balloon = growth.balloons().get(number);
        return balloon.refusal()
                .map(refusal -> phrases().fill("growth.refusal." + refusal, balloon(number), balloon.detail()));
    }

    /** What is stated of a balloon's nominal and rated burst pressure, with the diameters there. */
    public String pressures(int number) {
        BalloonGrowth balloon = growth.balloons().get(number);
        return phrases().fill("growth.pressures", balloon(number), stated(balloon.nominal(), balloon.atNominal()),
                stated(balloon.ratedBurst(), balloon.atRatedBurst()));
    }

    private String stated(Optional<Pressure> pressure, Optional<Point> there) {
        return pressure.map(p -> there.map(point -> phrases().fill("growth.at", diameter(point), p.text()))
                .orElseGet(() -> phrases().fill("growth.noneAt", p.text())))
                .orElse(phrases().get("value.unknown"));
    }

    private String diameter(Point point) {
        return words.lengths().device(point.diameter());
    }

    /** What a balloon's table says of a pressure: as printed, worked out between two rows, or nothing. */
    public String at(int number, Pressure pressure) {
        BalloonGrowth balloon = growth.balloons().get(number);
        return balloon.at(pressure)
                .map(point -> balloon.isPrinted(point.pascals()) ? diameter(point)
                        : phrases().fill("growth.between", diameter(point)))
                .orElse(phrases().get("value.none"));
    }

    /** A pressure in the unit of the curves, with at most one decimal. */
    public String pressure(Pressure pressure) {
        BigDecimal number = pressure.pascals().divide(growth.unit().pascals(), 1, RoundingMode.HALF_EVEN);
        BigDecimal plain = number.stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString() + " " + growth.unit().symbol();
    }

    /** Everything that is to be said below a plot: missing curves, missing pressures, and how to read it. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < growth.balloons().size(); i++) {
            refusal(i).ifPresent(notes::add);
            BalloonGrowth balloon = growth.balloons().get(i);
            if (balloon.table().isPresent() && balloon.ratedBurst().isEmpty()) {
                notes.add(phrases().fill("growth.noRatedBurst", ProfileWords.letter(i)));
            }
        }
        notes.add(phrases().get("growth.note"));
        return notes;
    }
}
