/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.statistics.BinomialInterval;

/**
 * What parts drawn at random say of the lanes of a question.
 *
 * @param phase going in or coming out
 * @param verdict of the lanes
 * @param clearance of the lanes: at the tightest place, or where the device stops; absent where nothing meets
 * @param seed that repeats the draws
 * @param samples how many parts were drawn
 * @param overlapping how many of them surely do not go through
 * @param undecided how many may or may not: round four discs and more, and along tapers beside others, the method only
 *                  bounds the room that is needed
 * @param leastMm the least gap of any of them, in millimetres; no more than there is
 * @param contradictions what the lanes say otherwise; empty when both agree
 */
public record SecondOpinion(Phase phase, Verdict verdict, Optional<Clearance> clearance, long seed, int samples,
        int overlapping, int undecided, double leastMm, List<Contradiction> contradictions) {

    public SecondOpinion {
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(clearance, "clearance");
        contradictions = List.copyOf(contradictions);
    }

    /** Whether nothing contradicts the lanes. */
    public boolean agrees() {
        return contradictions.isEmpty();
    }

    /**
     * The share of parts that overlap, with an interval that holds it with that confidence, whatever those do that are
     * undecided.
     */
    public BinomialInterval share(double confidence) {
        return new BinomialInterval(BinomialInterval.of(overlapping, samples, confidence).low(),
                BinomialInterval.of(overlapping + undecided, samples, confidence).high());
    }

    /** What the second method found otherwise. */
    public enum Difference {
        /** A part overlaps, though the worst lane leaves room. */
        OVERLAPS_THOUGH_WORST_LEAVES_ROOM,
        /** A part goes through, though even the best lane overlaps. */
        PASSES_THOUGH_BEST_OVERLAPS,
        /** With every figure at its unfavourable end the gap is another one than the worst lane's. */
        ANOTHER_WORST_GAP,
        /** A rigid part stops in a bend, though the lanes say that even the worst one passes. */
        STOPS_IN_BEND_THOUGH_WORST_PASSES,
        /** With every figure at its centre all rigid parts pass the bends, though the lanes say that one stops. */
        PASSES_BEND_THOUGH_NOMINAL_STOPS,
        /** With every figure at its centre it goes through, though the lanes say blocked, or the other way round. */
        ANOTHER_NOMINAL_VERDICT
    }

    /**
     * One contradiction.
     *
     * @param difference what it is
     * @param gapMm the gap that the second method found, in millimetres
     * @param sample number of the part, from 0; -1 for the parts whose figures all lie at their ends or centres
     * @param drawn the figures of that part
     */
    public record Contradiction(Difference difference, double gapMm, int sample, List<Drawn> drawn) {
        public Contradiction {
            Objects.requireNonNull(difference, "difference");
            drawn = List.copyOf(drawn);
        }
    }

    /**
     * One figure of a part.
     *
     * @param where device and section
     * @param value millimetres, or a factor of growth
     */
    public record Drawn(String where, double value) {
    }
}
