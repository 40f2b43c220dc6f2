/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

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
 * Whether enough of a guide extension's tube stays inside the guide: the one that is advanced, or the one in place that
 * a device passes. A collar outside the guide takes nothing any more, which blocks; less overlap than the rule set asks
 * for is tight.
 */
public final class OverlapCheck implements FitCheck {

    /** A tube with a collar, and how far its tip sticks out of the guide. */
    private record Tube(Device device, Lumen lumen, Length protrusion) {
    }

    @Override
    public boolean concerns(Terms terms) {
        return terms.conditions().through().isPresent()
                || terms.direction() == Direction.TIP_FIRST && terms.reach().isPresent();
    }

    @Override
    public boolean concerns(Terms terms, ReadDevice inner) {
        return concerns(terms) && (terms.conditions().through().isPresent()
                || inner.device().mainLumen().filter(l -> l.opening() == Lumen.Opening.COLLAR).isPresent());
    }

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        return tube(question).filter(t -> t.lumen().opening() == Lumen.Opening.COLLAR)
                .map(t -> found(t, question.rules().limits().allowance(Purpose.EXTENSION_OVERLAP)))
                .orElse(Finding.SILENT);
    }

    private static Optional<Tube> tube(FitQuestion question) {
        if (question.conditions().through().isPresent()) {
            return question.conditions().through()
                    .map(t -> new Tube(t.extension().device(), t.lumen(), t.protrusion()));
        }
        if (question.reach().isEmpty() || question.direction() != Direction.TIP_FIRST) {
            return Optional.empty();
        }
        return question.inner().device().mainLumen()
                .map(lumen -> new Tube(question.inner().device(), lumen, question.reach().get()));
    }

    private static Finding found(Tube tube, Optional<Allowance> least) {
        if (tube.lumen().length().equals(Length.ZERO)) {
            return Finding.of(Verdict.UNKNOWN,
                    List.of(Reason.of(ReasonCode.TUBE_NOT_STATED, Reason.name(tube.device().name()))));
        }
        Length inside = tube.lumen().proximalAt().minus(tube.protrusion());
        LengthChain chain = chain(tube, least.map(Allowance::length).orElse(Length.ZERO));
        if (inside.isNegative()) {
            return Finding.shown(Verdict.BLOCKED, List.of(Reason.of(ReasonCode.COLLAR_BEYOND_TIP,
                    Reason.name(tube.device().name()), Reason.distance(inside.negated()))), chain);
        }
        if (!chain.margin().isNegative()) {
            return Finding.shown(Verdict.FITS, List.of(), chain);
        }
        return Finding.shown(Verdict.TIGHT,
                List.of(Reason.of(ReasonCode.LITTLE_OVERLAP, Reason.name(tube.device().name()),
                        Reason.distance(inside), Reason.distance(least.orElseThrow().length()),
                        Reason.source(least.orElseThrow().source()))),
                chain);
    }

    private static LengthChain chain(Tube tube, Length least) {
        return LengthChain.of(LengthChain.Question.OVERLAP,
                new Link(Part.TUBE_LENGTH, tube.device().id(), tube.lumen().proximalAt()),
                new Link(Part.PROTRUSION, tube.device().id(), tube.protrusion().negated()),
                new Link(Part.LEAST_OVERLAP, "", least.negated()));
    }
}
