/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

import org.ferrule.fit.check.Finding;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.opinion.SecondOpinion.Contradiction;
import org.ferrule.fit.engineering.opinion.SecondOpinion.Difference;
import org.ferrule.fit.engineering.opinion.SecondOpinion.Drawn;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * Draws parts within the tolerances of a question, pushes each of them through by a method of its own, and compares with
 * the lanes of the passage: where the worst lane leaves room no part may overlap, where the best lane overlaps every
 * part must. Figures are drawn independently, evenly between their ends, or normally where a standard deviation is
 * stated. For a device that passes alone.
 */
public final class SecondOpinions {
    /** Tapers, growth and outlines that are not round are rounded; two nanometres cover that. */
    private static final double ROUNDING = 6;
    private static final double THIRDS_PER_MM = LengthUnit.MILLIMETRE.thirdNanometres();
    private static final int NOT_DRAWN = -1;

    private final Parts parts;
    private final Insertion insertion;
    private final Finding lanes;
    private final boolean exactOutlines;
    private final List<Contradiction> contradictions = new ArrayList<>();

    private SecondOpinions(FitQuestion question, Phase phase, Finding lanes) {
        this.parts = new Parts(question, phase);
        this.lanes = lanes;
        List<Piece> lumen = parts.lumen();
        List<Piece> device = parts.device();
        Length travel = question.travel().orElseThrow(() -> new NotComparableException("the travel is not known"));
        this.insertion = new Insertion(lumen, device, travel.thirdNanometres());
        this.exactOutlines = question.inner().device().sections().stream()
                .allMatch(s -> s.distal() instanceof Contour.Round && s.proximal() instanceof Contour.Round);
    }

    /**
     * Asks for a second opinion.
     *
     * @param seed the same seed draws the same parts
     * @param samples how many parts to draw, at least 1
     * @throws NotComparableException when a needed figure is missing, or other devices lie in the lumen
     */
    public static SecondOpinion of(FitQuestion question, Phase phase, long seed, int samples) {
        return of(question, phase, new PassageCheck().check(question, phase), seed, samples);
    }

    /** The same on what somebody else says of the lanes. */
    static SecondOpinion of(FitQuestion question, Phase phase, Finding lanes, long seed, int samples) {
        if (samples < 1) {
            throw new IllegalArgumentException("no parts to draw: " + samples);
        }
        if (!question.conditions().alone()) {
            throw new NotComparableException("the device does not pass alone");
        }
        SecondOpinions opinion = new SecondOpinions(question, phase, lanes);
        if (opinion.lanes.verdict() == Verdict.UNKNOWN) {
            throw new NotComparableException("the lanes leave the question unknown");
        }
        if (!opinion.insertion.meets()) {
            throw new NotComparableException("the device never meets the lumen");
        }
        return opinion.compare(phase, seed, samples);
    }

    private SecondOpinion compare(Phase phase, long seed, int samples) {
        checkEnds();
        RandomGenerator random = new SplittableRandom(seed);
        int overlapping = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < samples; i++) {
            double[] drawn = parts.draws().stream().mapToDouble(d -> d.from(random)).toArray();
            double gap = insertion.leastGap(drawn);
            overlapping += gap < 0 ? 1 : 0;
            least = Math.min(least, gap);
            checkSample(gap, i, drawn);
        }
        return new SecondOpinion(phase, lanes.verdict(), lanes.clearance(), seed, samples, overlapping,
                least / THIRDS_PER_MM, contradictions);
    }

    private boolean blocked() {
        return lanes.verdict() == Verdict.BLOCKED;
    }

    private void checkEnds() {
        double[] worst = values(Draw::worst);
        double worstGap = insertion.leastGap(worst);
        Optional<Length> laneWorst = lanes.clearance().map(Clearance::worst);
        if (!blocked() && laneWorst.isPresent()
                && Math.abs(worstGap - laneWorst.get().thirdNanometres()) > ROUNDING) {
            contradict(Difference.ANOTHER_WORST_GAP, worstGap, NOT_DRAWN, worst);
        }
        double[] nominal = values(Draw::centre);
        double nominalGap = insertion.leastGap(nominal);
        boolean comparable = !parts.centreAssumed() && exactOutlines && Math.abs(nominalGap) > ROUNDING;
        if (comparable && blocked() != nominalGap < 0) {
            contradict(Difference.ANOTHER_NOMINAL_VERDICT, nominalGap, NOT_DRAWN, nominal);
        }
    }

    private double[] values(ToDoubleFunction<Draw> lane) {
        return parts.draws().stream().mapToDouble(lane).toArray();
    }

    private void checkSample(double gap, int sample, double[] drawn) {
        boolean worstLeavesRoom = !blocked() && lanes.clearance().filter(c -> !c.worst().isNegative()).isPresent();
        if (worstLeavesRoom && gap < -ROUNDING) {
            contradict(Difference.OVERLAPS_THOUGH_WORST_LEAVES_ROOM, gap, sample, drawn);
        }
        boolean bestOverlaps = blocked() && lanes.clearance().filter(c -> c.best().isNegative()).isPresent();
        if (bestOverlaps && gap > ROUNDING) {
            contradict(Difference.PASSES_THOUGH_BEST_OVERLAPS, gap, sample, drawn);
        }
    }

    /** One of a kind is enough to look into. */
    private void contradict(Difference difference, double gap, int sample, double[] drawn) {
        if (contradictions.stream().noneMatch(c -> c.difference() == difference)) {
            List<Drawn> figures = IntStream.range(0, drawn.length)
                    .mapToObj(i -> drawn(parts.draws().get(i), drawn[i])).toList();
            contradictions.add(new Contradiction(difference, gap / THIRDS_PER_MM, sample, figures));
        }
    }

    private static Drawn drawn(Draw draw, double value) {
        return new Drawn(draw.where(), draw.of() == Draw.Of.GROWTH ? value : value / THIRDS_PER_MM);
    }
}
