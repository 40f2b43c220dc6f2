/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/** Whether the inner device is long enough for the reach that is asked for, or a wire for the lumen over it. */
public final class LengthCheck implements FitCheck {

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        Length needed = question.lengthNeeded();
        Optional<Length> stated = question.inner().device().statedLength();
        if (stated.isPresent() && stated.get().compareTo(needed) < 0) {
            return tooShort(stated.get(), needed);
        }
        Optional<Device> unstated = question.reach().flatMap(r -> question.ofUnstatedLength());
        return unstated.map(LengthCheck::unknown).orElseGet(() -> Finding.of(Verdict.FITS, List.of()));
    }

    private static Finding tooShort(Length stated, Length needed) {
        return Finding.of(Verdict.BLOCKED, List.of(Reason.of(ReasonCode.TOO_SHORT,
                Reason.distance(needed.minus(stated)), Reason.distance(stated), Reason.distance(needed))));
    }

    private static Finding unknown(Device unstated) {
        return Finding.of(Verdict.UNKNOWN,
                List.of(Reason.of(ReasonCode.LENGTH_NOT_STATED, Reason.name(unstated.id()))));
    }
}
