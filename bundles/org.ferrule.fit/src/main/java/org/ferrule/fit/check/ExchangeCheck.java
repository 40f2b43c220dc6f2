/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.LengthChain.Link;
import org.ferrule.fit.evidence.LengthChain.Part;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.rules.Limits.Allowance;
import org.ferrule.fit.rules.Limits.Purpose;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * Whether a device that takes its wire along its whole length can be exchanged over the wire that it runs on: the wire
 * must be as long as what lies in the body, hub and valve, the device, and a grip (common practice). There are other
 * ways, so it is only a caution. Silent where the rule set says nothing of a grip, or the wire's length is not known.
 */
public final class ExchangeCheck implements FitCheck {

    @Override
    public boolean concerns(Terms terms) {
        return terms.direction() == Direction.TIP_FIRST && terms.reach().isPresent()
                && terms.rules().limits().allowance(Purpose.GRIP).isPresent();
    }

    @Override
    public boolean concerns(Terms terms, ReadDevice inner) {
        return concerns(terms) && isOverTheWire(inner.device())
                && inner.wire().device().flatMap(Device::statedLength).isPresent();
    }

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        Optional<Allowance> grip = question.rules().limits().allowance(Purpose.GRIP);
        boolean asked = question.direction() == Direction.TIP_FIRST && question.reach().isPresent();
        if (!asked || grip.isEmpty() || !isOverTheWire(question.inner().device())) {
            return Finding.SILENT;
        }
        Optional<Device> wire = question.inner().wire().device().filter(w -> w.statedLength().isPresent());
        Optional<Length> length = question.inner().device().statedLength();
        return wire.isEmpty() || length.isEmpty() ? Finding.SILENT
                : found(question, wire.get(), length.get(), grip.get());
    }

    private static boolean isOverTheWire(Device device) {
        return device.wireLumen().filter(l -> l.opening() == Lumen.Opening.HUB).isPresent();
    }

    private static Finding found(FitQuestion question, Device wire, Length deviceLength, Allowance grip) {
        LengthChain chain = chain(question, wire, deviceLength, grip);
        List<Reason> reasons = new ArrayList<>();
        if (chain.margin().isNegative()) {
            Length length = wire.statedLength().orElseThrow();
            reasons.add(Reason.of(ReasonCode.EXCHANGE_WIRE_SHORT, Reason.name(wire.name()),
                    Reason.distance(chain.margin().negated()), Reason.distance(length),
                    Reason.distance(length.minus(chain.margin())), Reason.source(grip.source())));
            wire.parts().extendable().filter(Boolean::booleanValue).ifPresent(
                    yes -> reasons.add(Reason.of(ReasonCode.EXCHANGE_BY_EXTENSION, Reason.name(wire.name()))));
        }
        return Finding.shown(Verdict.FITS, reasons, chain);
    }

    private static LengthChain chain(FitQuestion question, Device wire, Length deviceLength, Allowance grip) {
        Length inBody = question.lumen().length().plus(question.outerTipAhead()).plus(question.reach().orElseThrow());
        Length valve = question.rules().limits().allowance(Purpose.HUB_AND_VALVE).map(Allowance::length)
                .orElse(Length.ZERO);
        return LengthChain.of(LengthChain.Question.EXCHANGE,
                new Link(Part.WIRE_LENGTH, wire.id(), wire.statedLength().orElseThrow()),
                new Link(Part.WIRE_IN_BODY, "", inBody.negated()),
                new Link(Part.HUB_AND_VALVE, "", valve.negated()),
                new Link(Part.EFFECTIVE_LENGTH, question.inner().device().id(), deviceLength.negated()),
                new Link(Part.GRIP, "", grip.length().negated()));
    }
}
