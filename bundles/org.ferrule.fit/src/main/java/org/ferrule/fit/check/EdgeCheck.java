/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Through;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;

/** Steps on the way: the collar of a guide extension going in, an open distal edge coming out. Cautions only. */
public final class EdgeCheck implements FitCheck {

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        List<Reason> reasons = new ArrayList<>();
        if (question.direction() == Direction.TIP_FIRST) {
            addSteps(reasons, question, phase);
        }
        return Finding.of(Verdict.FITS, reasons);
    }

    private static void addSteps(List<Reason> reasons, FitQuestion question, Phase phase) {
        Optional<Through> through = question.conditions().through();
        if (phase == Phase.IN && (question.lumen().opening() == Lumen.Opening.COLLAR || through.isPresent())) {
            reasons.add(Reason.of(ReasonCode.COLLAR_STEP));
        }
        if (phase == Phase.IN) {
            through.flatMap(t -> tooThick(t, question)).ifPresent(reasons::add);
        }
        boolean leavesLumen = question.travel().map(t -> t.compareTo(question.opensAt()) > 0).orElse(true);
        if (phase == Phase.OUT && leavesLumen && question.inner().device().deploys()) {
            reasons.add(Reason.of(ReasonCode.OPEN_EDGE));
        }
    }

    /** Whether the extension goes in is a question of its own; but where it surely does not, nothing goes through it. */
    private static Optional<Reason> tooThick(Through through, FitQuestion question) {
        return through.tooThickFor(question.outer().bore(question.lumen()), question.lumen().length())
                .map(contact -> Reason.of(ReasonCode.EXTENSION_TOO_THICK,
                        Reason.name(through.extension().device().id()),
                        Reason.diameter(contact.deviceFigure().centre()),
                        Reason.diameter(contact.lumenFigure().centre())));
    }
}
