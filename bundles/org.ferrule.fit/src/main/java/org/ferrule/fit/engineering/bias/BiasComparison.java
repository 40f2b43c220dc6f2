/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.bias;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.verdict.Verdict;

/**
 * What it changes that kinds of stated figures run low: a matrix under a rule set, and under the same without that bias
 * ({@link org.ferrule.fit.rules.RuleSet#withoutBias()}).
 *
 * @param with the bias, as the rule set says
 * @param without the bias
 * @param changed the cells whose verdict differs, going in or coming out, line by line
 */
public record BiasComparison(FitMatrix with, FitMatrix without, List<Cell> changed) {

    public BiasComparison {
        Objects.requireNonNull(with, "with");
        Objects.requireNonNull(without, "without");
        changed = List.copyOf(changed);
    }

    /**
     * A verdict that differs.
     *
     * @param outerIndex its line
     * @param innerIndex its column
     * @param phase going in or coming out
     * @param with the verdict with the bias
     * @param without the verdict without it
     */
    public record Cell(int outerIndex, int innerIndex, Phase phase, Verdict with, Verdict without) {
    }

    /**
     * Compares two matrices of the same devices in the same order.
     *
     * @throws IllegalArgumentException when they ask about different devices
     */
    public static BiasComparison of(FitMatrix with, FitMatrix without) {
        if (!devices(with.question()).equals(devices(without.question()))) {
            throw new IllegalArgumentException("two matrices of different devices cannot be compared");
        }
        List<Cell> changed = new ArrayList<>();
        for (int line = 0; line < with.question().outer().size(); line++) {
            for (int column = 0; column < with.question().inner().size(); column++) {
                add(changed, line, column, with.answer(line, column), without.answer(line, column));
            }
        }
        return new BiasComparison(with, without, changed);
    }

    private static List<Object> devices(MatrixQuestion question) {
        List<Object> devices = new ArrayList<>();
        question.outer().stream().map(MatrixLine::lumen).forEach(devices::add);
        question.outer().stream().map(l -> l.device().device()).forEach(devices::add);
        question.inner().stream().map(ReadDevice::device).forEach(devices::add);
        return devices;
    }

    private static void add(List<Cell> changed, int line, int column, FitAnswer with, FitAnswer without) {
        for (Phase phase : Phase.values()) {
            Verdict before = with.in(phase).verdict();
            Verdict after = without.in(phase).verdict();
            if (before != after) {
                changed.add(new Cell(line, column, phase, before, after));
            }
        }
    }

    /** How many cells have each verdict going in, with the bias. */
    public Map<Verdict, Integer> countsWith() {
        return with.counts();
    }

    /** How many cells have each verdict going in, without it. */
    public Map<Verdict, Integer> countsWithout() {
        return without.counts();
    }
}
