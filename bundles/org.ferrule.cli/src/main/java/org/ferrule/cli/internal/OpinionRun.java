/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.opinion.NotComparableException;
import org.ferrule.fit.engineering.opinion.SecondOpinion;
import org.ferrule.fit.engineering.opinion.SecondOpinions;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.FitQuestion;

/** Second opinions on one question or on all of a matrix. */
public final class OpinionRun {
    private final long seed;
    private final int samples;
    private final List<Line> lines = new ArrayList<>();

    /**
     * The opinion on one question and one way.
     *
     * @param question what was asked
     * @param phase going in or coming out
     * @param opinion the opinion; null when there is none
     * @param why there is none; empty when there is one
     */
    public record Line(FitQuestion question, Phase phase, SecondOpinion opinion, String why) {
        /** Whether an opinion contradicts the lanes. */
        public boolean contradicts() {
            return opinion != null && !opinion.agrees();
        }
    }

    public OpinionRun(long seed, int samples) {
        if (samples < 1) {
            throw new CommandLineException("--samples must be 1 or more, not " + samples);
        }
        this.seed = seed;
        this.samples = samples;
    }

    /** Asks about one question, both ways. */
    public void ask(FitQuestion question) {
        for (Phase phase : Phase.values()) {
            try {
                lines.add(new Line(question, phase, SecondOpinions.of(question, phase, seed, samples), ""));
            } catch (NotComparableException e) {
                lines.add(new Line(question, phase, null, e.getMessage()));
            }
        }
    }

    /** Asks about every pair. */
    public void ask(MatrixQuestion matrix) {
        for (int line = 0; line < matrix.outer().size(); line++) {
            for (int column = 0; column < matrix.inner().size(); column++) {
                ask(matrix.question(line, column));
            }
        }
    }

    /** All opinions in the order asked. */
    public List<Line> lines() {
        return lines;
    }

    /** Those that contradict the lanes. */
    public List<Line> contradictions() {
        return lines.stream().filter(Line::contradicts).toList();
    }

    /** How many there are. */
    public long compared() {
        return lines.stream().filter(line -> line.opinion() != null).count();
    }
}
