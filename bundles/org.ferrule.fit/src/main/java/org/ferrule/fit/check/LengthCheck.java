/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/** Whether the inner device is long enough for the reach that is asked for. */
public final class LengthCheck implements FitCheck {

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        if (question.reach().isEmpty()) {
            return Finding.of(Verdict.FITS, List.of());
        }
        Optional<Length> length = question.inner().device().insertableLength();
        if (length.isEmpty()) {
            return Finding.of(Verdict.UNKNOWN, List.of(Reason.of(ReasonCode.LENGTH_NOT_STATED,
                    Reason.name(question.inner().device().id()))));
        }
        Length needed = question.lengthNeeded();
        if (needed.compareTo(length.get()) <= 0) {
            return Finding.of(Verdict.FITS, List.of());
        }
        return Finding.of(Verdict.BLOCKED, List.of(Reason.of(ReasonCode.TOO_SHORT,
                Reason.distance(needed.minus(length.get())), Reason.distance(length.get()), Reason.distance(needed))));
    }
}
