/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.LengthChain.Link;
import org.ferrule.fit.evidence.LengthChain.Part;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.rules.Limits.Allowance;
import org.ferrule.fit.rules.Limits.Purpose;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * Whether a device comes as far as is asked when hub and valve take what the rule set allows for them: effective length
 * less outer length, allowance and reach. Too short by the allowance alone is tight; too short without it is what
 * {@link LengthCheck} finds. Silent where the rule set gives no allowance, and round a sheath, whose valve is part of its
 * hub.
 */
public final class ReachCheck implements FitCheck {

    @Override
    public boolean concerns(Terms terms) {
        return terms.direction() == Direction.TIP_FIRST && terms.reach().isPresent()
                && terms.rules().limits().allowance(Purpose.HUB_AND_VALVE).isPresent();
    }

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        Optional<Allowance> valve = question.rules().limits().allowance(Purpose.HUB_AND_VALVE);
        boolean asked = question.direction() == Direction.TIP_FIRST && question.reach().isPresent();
        boolean measured = !question.lumen().length().equals(Length.ZERO)
                && question.outer().device().kind() != DeviceKind.INTRODUCER_SHEATH;
        return asked && measured && valve.isPresent() ? found(question, valve.get()) : Finding.SILENT;
    }

    private static Finding found(FitQuestion question, Allowance valve) {
        Device inner = question.inner().device();
        LengthChain chain = chain(question, inner.insertableLength().orElse(Length.ZERO), valve);
        if (!chain.margin().isNegative()) {
            return Finding.shown(Verdict.FITS, List.of(), chain);
        }
        if (inner.statedLength().isEmpty()) {
            return Finding.of(Verdict.UNKNOWN,
                    List.of(Reason.of(ReasonCode.LENGTH_NOT_STATED, Reason.name(inner.id()))));
        }
        Reason reason = Reason.of(ReasonCode.SHORT_WITH_VALVE, Reason.distance(chain.margin().negated()),
                Reason.distance(valve.length()), Reason.source(valve.source()));
        return Finding.shown(Verdict.TIGHT, List.of(reason), chain);
    }

    private static LengthChain chain(FitQuestion question, Length insertable, Allowance valve) {
        return LengthChain.of(LengthChain.Question.REACH,
                new Link(Part.EFFECTIVE_LENGTH, question.inner().device().id(), insertable),
                new Link(Part.LUMEN_LENGTH, question.outer().device().id(), question.lumen().proximalAt().negated()),
                new Link(Part.PROTRUSION, "", question.lumen().distalAt().minus(question.outerTipAhead())),
                new Link(Part.HUB_AND_VALVE, "", valve.length().negated()),
                new Link(Part.REACH_ASKED, "", question.reach().orElseThrow().negated()));
    }
}
