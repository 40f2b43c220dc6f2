/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

import org.ferrule.fit.check.BendCheck;
import org.ferrule.fit.check.Finding;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.opinion.SecondOpinion.Contradiction;
import org.ferrule.fit.engineering.opinion.SecondOpinion.Difference;
import org.ferrule.fit.engineering.opinion.SecondOpinion.Drawn;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * Draws parts within the tolerances of a question, pushes each of them through by a method of its own, and compares with
 * the lanes of the passage: where the worst lane leaves room no part may overlap, where the best lane overlaps every
 * part must. Figures are drawn independently, evenly between their ends, or normally where a standard deviation is
 * stated. Beside others and through an extension, too; rigid parts go round
 * the bends of the lumen.
 */
public final class SecondOpinions {
    /** Tapers, growth and outlines that are not round are rounded; two nanometres cover that. */
    private static final double ROUNDING = 6;
    /** What the golden section leaves open, and more. */
    private static final double BEND_ROUNDING = 30;
    private static final double THIRDS_PER_MM = LengthUnit.MILLIMETRE.thirdNanometres();
    private static final int NOT_DRAWN = -1;

    private final Draws draws;
    private final Push push;
    private final BendPush bends;
    private final Finding lanes;
    private final Verdict bendLanes;
    private final boolean exact;
    private final double rounding;
    private final List<Contradiction> contradictions = new ArrayList<>();

    private SecondOpinions(FitQuestion question, Phase phase, Finding lanes, Verdict bendLanes) {
        this.draws = new Draws(question.rules());
        this.lanes = lanes;
        boolean alone = question.conditions().alone();
        Length travel = question.travel().orElseThrow(() -> new NotComparableException("the travel is not known"));
        this.push = alone ? alone(question, phase, travel) : beside(question, phase, travel);
        this.bends = new BendPush(question, outline(question, phase), draws);
        this.bendLanes = bendLanes;
        this.rounding = alone ? ROUNDING : 2 * ROUNDING;
        this.exact = !alone || question.inner().device().sections().stream()
                .allMatch(s -> s.distal() instanceof Contour.Round && s.proximal() instanceof Contour.Round);
    }

    private static Phase outline(FitQuestion question, Phase phase) {
        return question.conditions().afterInflation() ? Phase.OUT : phase;
    }

    private Push alone(FitQuestion question, Phase phase, Length travel) {
        Parts inner = new Parts(question.inner(), outline(question, phase), draws);
        List<Piece> lumen = new Parts(question.outer(), phase, draws).lumen(question.lumen());
        List<Piece> device = inner.solids().stream().map(Solid::whole).toList();
        boolean reversed = question.direction() != Direction.TIP_FIRST;
        return new Insertion(reversed ? reversed(lumen, question.lumen().length()) : lumen,
                reversed ? reversed(device, inner.whole()) : device, travel.thirdNanometres());
    }

    private static List<Piece> reversed(List<Piece> pieces, Length whole) {
        return pieces.stream().map(p -> p.reversed(whole.thirdNanometres())).toList();
    }

    private Push beside(FitQuestion question, Phase phase, Length travel) {
        List<Solid> device = new Parts(question.inner(), outline(question, phase), draws).solids();
        return new SharedInsertion(Company.along(question, phase, draws), device, travel.thirdNanometres());
    }

    /**
     * Asks for a second opinion.
     *
     * @param seed the same seed draws the same parts
     * @param samples how many parts to draw, at least 1
     * @throws NotComparableException when a needed figure is missing, or nothing meets
     */
    public static SecondOpinion of(FitQuestion question, Phase phase, long seed, int samples) {
        return of(question, phase, new PassageCheck().check(question, phase),
                new BendCheck().check(question, phase).verdict(), seed, samples);
    }

    /** The same on what somebody else says of the lanes, of the passage and in bends. */
    static SecondOpinion of(FitQuestion question, Phase phase, Finding lanes, Verdict bendLanes, long seed,
            int samples) {
        if (samples < 1) {
            throw new IllegalArgumentException("no parts to draw: " + samples);
        }
        if (lanes.verdict() == Verdict.UNKNOWN) {
            throw new NotComparableException("the lanes leave the question unknown");
        }
        SecondOpinions opinion = new SecondOpinions(question, phase, lanes, bendLanes);
        if (!opinion.push.meets()) {
            throw new NotComparableException("the device never meets the lumen");
        }
        return opinion.compare(phase, seed, samples);
    }

    private SecondOpinion compare(Phase phase, long seed, int samples) {
        checkEnds();
        RandomGenerator random = new SplittableRandom(seed);
        int overlapping = 0;
        int undecided = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < samples; i++) {
            double[] drawn = draws.values(d -> d.from(random));
            Gap gap = push.leastGap(drawn);
            overlapping += gap.high() < 0 ? 1 : 0;
            undecided += gap.low() < 0 && gap.high() >= 0 ? 1 : 0;
            least = Math.min(least, gap.low());
            checkSample(gap, i, drawn);
            checkStopInBend(i, drawn);
        }
        return new SecondOpinion(phase, lanes.verdict(), lanes.clearance(), seed, samples, overlapping, undecided,
                least / THIRDS_PER_MM, contradictions);
    }

    private boolean blocked() {
        return lanes.verdict() == Verdict.BLOCKED;
    }

    /** Beside others a worst lane may ask for more room than there must be, and so be told a smaller clearance. */
    private void checkEnds() {
        double[] worst = draws.values(Draw::worst);
        Gap worstGap = push.leastGap(worst);
        Optional<Long> laneWorst = lanes.clearance().map(c -> c.worst().thirdNanometres());
        if (!blocked() && laneWorst.filter(lane -> isAnother(lane, worstGap)).isPresent()) {
            contradict(Difference.ANOTHER_WORST_GAP, worstGap.high(), NOT_DRAWN, worst);
        }
        checkStopInBend(NOT_DRAWN, worst);
        double[] nominal = draws.values(Draw::centre);
        if (!draws.centreAssumed()) {
            checkPassInBend(nominal);
        }
        Gap nominalGap = push.leastGap(nominal);
        boolean another = blocked() ? nominalGap.low() > rounding : nominalGap.high() < -rounding;
        if (!draws.centreAssumed() && exact && another) {
            contradict(Difference.ANOTHER_NOMINAL_VERDICT, blocked() ? nominalGap.low() : nominalGap.high(), NOT_DRAWN,
                    nominal);
        }
    }

    /** Round bends, where the lanes say that all passes even at worst, nothing may stop. */
    private void checkStopInBend(int sample, double[] drawn) {
        if (bends.isAsked() && bendLanes == Verdict.FITS && bends.isTorus(drawn)
                && bends.atMostLeft(drawn) < -BEND_ROUNDING) {
            contradict(Difference.STOPS_IN_BEND_THOUGH_WORST_PASSES, bends.atMostLeft(drawn), sample, drawn);
        }
    }

    private void checkPassInBend(double[] nominal) {
        if (bends.isAsked() && bendLanes == Verdict.BLOCKED && bends.isTorus(nominal)
                && bends.surelyLeft(nominal) > BEND_ROUNDING) {
            contradict(Difference.PASSES_BEND_THOUGH_NOMINAL_STOPS, bends.surelyLeft(nominal), NOT_DRAWN, nominal);
        }
    }

    private boolean isAnother(long lane, Gap gap) {
        boolean isExact = gap.low() == gap.high();
        return lane > gap.high() + rounding || isExact && lane < gap.low() - rounding;
    }

    private void checkSample(Gap gap, int sample, double[] drawn) {
        boolean worstLeavesRoom = !blocked() && lanes.clearance().filter(c -> !c.worst().isNegative()).isPresent();
        if (worstLeavesRoom && gap.high() < -rounding) {
            contradict(Difference.OVERLAPS_THOUGH_WORST_LEAVES_ROOM, gap.high(), sample, drawn);
        }
        boolean bestOverlaps = blocked() && lanes.clearance().filter(c -> c.best().isNegative()).isPresent();
        if (bestOverlaps && gap.low() > rounding) {
            contradict(Difference.PASSES_THOUGH_BEST_OVERLAPS, gap.low(), sample, drawn);
        }
    }

    /** One of a kind is enough to look into. */
    private void contradict(Difference difference, double gap, int sample, double[] drawn) {
        if (contradictions.stream().noneMatch(c -> c.difference() == difference)) {
            List<Drawn> figures = IntStream.range(0, drawn.length)
                    .mapToObj(i -> drawn(draws.list().get(i), drawn[i])).toList();
            contradictions.add(new Contradiction(difference, gap / THIRDS_PER_MM, sample, figures));
        }
    }

    private static Drawn drawn(Draw draw, double value) {
        return new Drawn(draw.where(), draw.of() == Draw.Of.GROWTH ? value : value / THIRDS_PER_MM);
    }
}
