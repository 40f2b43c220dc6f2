/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.Chance;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.Packings;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Route;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.passage.Through;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Sample;
import org.ferrule.statistics.Interference;
import org.ferrule.statistics.JointProbability;

/**
 * The chance that a pair taken at random overlaps. Only where both figures at the limiting place have a stated standard
 * deviation: a limit on a label is never taken for some of them. Between bounds, since all places of one pair share a
 * device or a lumen. A figure beside the verdict, which it does not change.
 */
public final class ChanceCheck implements FitCheck {
    private final Packings packings = new Packings();

    /** A stretch of the device in a stretch of the lumen. */
    private record Pair(SampledPart lumen, SampledPart device) {
        double meanMm() {
            return lumen.sample().mean().minus(device.sample().mean()).mm();
        }

        double deviationMm() {
            return Interference.combined(deviation(lumen.sample()), deviation(device.sample()));
        }

        private static double deviation(Sample sample) {
            return sample.standardDeviation().mm();
        }

        double chance() {
            return Interference.probability(meanMm(), deviationMm());
        }
    }

    @Override
    public boolean concerns(Terms terms) {
        return terms.conditions().inside().isEmpty() && terms.direction() == Direction.TIP_FIRST;
    }

    @Override
    public boolean concerns(Terms terms, ReadDevice inner) {
        return concerns(terms) && SampledPart.mayHave(inner.device())
                && !(SampledPart.ofShaft(inner.device(), Phase.IN).isEmpty()
                        && SampledPart.ofShaft(inner.device(), Phase.OUT).isEmpty());
    }

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        if (!question.conditions().inside().isEmpty() || question.direction() != Direction.TIP_FIRST) {
            return Finding.SILENT;
        }
        List<SampledPart> lumen = lumen(question);
        List<SampledPart> device = lumen.isEmpty() ? List.of()
                : SampledPart.ofShaft(question.inner().device(),
                        question.conditions().afterInflation() ? Phase.OUT : phase);
        return device.isEmpty() ? Finding.SILENT : found(question, phase, lumen, device);
    }

    /** The lumen that the device has for itself: an extension's tube, or that of the outer device. */
    private static List<SampledPart> lumen(FitQuestion question) {
        Optional<Through> through = question.conditions().through();
        return through.map(t -> SampledPart.ofLumen(t.lumen()).stream()
                .map(part -> part.movedBy(t.collarAt(question.lumen().length()), t.nameOf(part.name()))).toList())
                .orElseGet(() -> SampledPart.ofLumen(question.lumen()));
    }

    private Finding found(FitQuestion question, Phase phase, List<SampledPart> lumen, List<SampledPart> device) {
        Route route = Route.of(question, phase);
        Optional<Limiting> limiting = route.transit(packings).tightest().map(route::limiting);
        List<Pair> pairs = pairs(lumen, device, route.travel());
        return limiting.flatMap(place -> at(place, pairs)).map(pair -> found(question, pair, pairs))
                .orElse(Finding.SILENT);
    }

    private static List<Pair> pairs(List<SampledPart> lumen, List<SampledPart> device, Length travel) {
        List<Pair> pairs = new ArrayList<>();
        for (SampledPart around : lumen) {
            device.stream().filter(in -> around.from().plus(in.from()).compareTo(travel) < 0)
                    .forEach(in -> pairs.add(new Pair(around, in)));
        }
        return pairs;
    }

    private static Optional<Pair> at(Limiting place, List<Pair> pairs) {
        return pairs.stream().filter(p -> p.lumen().holds(place.lumenSection(), place.lumenStation())
                && p.device().holds(place.deviceSection(), place.deviceStation())).findFirst();
    }

    private static Finding found(FitQuestion question, Pair limiting, List<Pair> pairs) {
        JointProbability joint = JointProbability.bounds(pairs.stream().map(Pair::chance).toList());
        Chance chance = new Chance(limiting.device().name(), limiting.lumen().name(), limiting.meanMm(),
                limiting.deviationMm(), joint.low(), joint.high());
        List<Reason> reasons = new ArrayList<>();
        question.rules().limits().chances().stream()
                .filter(limit -> joint.high() > limit.greatest().doubleValue())
                .forEach(limit -> reasons.add(Reason.of(ReasonCode.CHANCE_TOO_HIGH, Reason.share(joint.high()),
                        Reason.share(limit.greatest().doubleValue()), Reason.source(limit.source()))));
        reasons.add(Reason.of(ReasonCode.CHANCE_OF_OVERLAP, Reason.share(joint.high()),
                Reason.name(limiting.device().name()), Reason.name(limiting.lumen().name())));
        return Finding.shown(Verdict.FITS, reasons, chance);
    }
}
