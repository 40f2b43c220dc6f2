/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Sample;
import org.ferrule.statistics.Interference;
import org.ferrule.statistics.JointProbability;

/**
 * Finds the size of a section for a chance of interference: normal parts, independent of each other, with the standard
 * deviations that are stated or were measured; a limit on a label is never taken for some of them. Of several places
 * the chances are added up, which no dependence between them can exceed.
 */
public final class ChanceSearch {
    private static final Length LARGEST = Length.of("50", LengthUnit.MILLIMETRE);

    private final MovableSection section;
    private final List<Sample> own;
    private final List<Sample> partners;

    private ChanceSearch(MovableSection section, FitQuestion question) {
        this.section = section;
        this.own = samples(Stream.of(section.distal(), section.proximal()).distinct(), section.place().name());
        this.partners = section.isBore() ? shaftSamples(question) : boreSamples(question);
    }

    /**
     * Searches.
     *
     * @param target chance that must not be exceeded, more than 0 and less than 1
     * @throws NoChanceException saying why no chance can be told, such as a standard deviation that is not stated
     */
    public static ChanceSize of(MovableSection section, FitQuestion question, double target) {
        if (!(target > 0 && target < 1)) {
            throw new IllegalArgumentException("a chance to aim at must lie between 0 and 1, not " + target);
        }
        requireAlone(section, question);
        return new ChanceSearch(section, question).search(target);
    }

    private static void requireAlone(MovableSection section, FitQuestion question) {
        if (!question.conditions().alone()) {
            throw new NoChanceException("other devices lie in the lumen");
        }
        boolean wireBeside = question.inner().device().lumens().stream()
                .anyMatch(l -> l.leavesShaft() && besideShaft(section, question, l.proximalAt()));
        if (wireBeside) {
            throw new NoChanceException("a wire lies beside the shaft, and its standard deviation is not stated");
        }
    }

    private static boolean besideShaft(MovableSection section, FitQuestion question, Length port) {
        return question.inner().device().sections().stream().filter(s -> question.enters(s.from(), s.to()))
                .filter(s -> section.isBore() || s.name().equals(section.place().name()))
                .anyMatch(s -> s.to().compareTo(port) > 0);
    }

    private static List<Sample> boreSamples(FitQuestion question) {
        List<Sample> samples = new ArrayList<>();
        for (LumenSection bore : question.lumen().sections()) {
            samples.addAll(samples(stated(bore.name(), bore.proximal(), bore.distal()), bore.name()));
        }
        return requireSome(samples, question.outer().device().id());
    }

    private static List<Sample> shaftSamples(FitQuestion question) {
        List<Sample> samples = new ArrayList<>();
        for (ShaftSection shaft : question.inner().device().sections()) {
            if (question.enters(shaft.from(), shaft.to())) {
                samples.addAll(samples(stated(shaft.name(), diameter(shaft, shaft.distal()),
                        diameter(shaft, shaft.proximal())), shaft.name()));
            }
        }
        return requireSome(samples, question.inner().device().id());
    }

    private static Optional<Dimension> diameter(ShaftSection section, Contour contour) {
        if (contour instanceof Contour.Round round) {
            return round.diameter();
        }
        throw new NoChanceException("section \"" + section.name() + "\" is not round");
    }

    private static Stream<Dimension> stated(String where, Optional<Dimension> one, Optional<Dimension> other) {
        return Stream.of(one, other).map(p -> p.filter(Dimension::readable)
                .orElseThrow(() -> new NoChanceException("a diameter of \"" + where + "\" is not stated"))).distinct();
    }

    private static List<Sample> samples(Stream<Dimension> printed, String where) {
        return printed.map(p -> p.sample().orElseThrow(() -> new NoChanceException("\"" + p.text() + "\" of \""
                + where + "\" states no standard deviation"))).toList();
    }

    private static List<Sample> requireSome(List<Sample> samples, String device) {
        if (samples.isEmpty()) {
            throw new NoChanceException("no diameter of device \"" + device + "\" is stated");
        }
        return samples;
    }

    private ChanceSize search(double target) {
        long least = section.leastMove().thirdNanometres();
        long most = LARGEST.minus(section.printed().largest()).thirdNanometres();
        long good = section.isBore() ? most : least;
        long bad = section.isBore() ? least : most;
        if (chanceAt(good) > target) {
            throw new NoChanceException("no size keeps the chance at " + target);
        }
        while (Math.abs(bad - good) > 1) {
            long middle = good + (bad - good) / 2;
            if (chanceAt(middle) > target) {
                bad = middle;
            } else {
                good = middle;
            }
        }
        return new ChanceSize(section.sizeAt(new Length(good)), chanceAt(good), own.size() * partners.size());
    }

    private double chanceAt(long by) {
        double moveMm = new Length(by).mm() * (section.isBore() ? 1 : -1);
        List<Double> chances = new ArrayList<>();
        for (Sample mine : own) {
            for (Sample other : partners) {
                double clearanceMm = section.isBore() ? mine.mean().minus(other.mean()).mm()
                        : other.mean().minus(mine.mean()).mm();
                double sdMm = Interference.combined(mine.standardDeviation().mm(), other.standardDeviation().mm());
                chances.add(Interference.probability(clearanceMm + moveMm, sdMm));
            }
        }
        return JointProbability.bounds(chances).high();
    }
}
