/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.LengthChain.Link;
import org.ferrule.fit.evidence.LengthChain.Part;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * Whether the side port of a rapid-exchange device stays inside the guide, or the extension, at the reach that is asked
 * for (common practice): outside, its wire would run beside the shaft in the vessel. It can still be done, so it is
 * tight and not blocked.
 */
public final class PortCheck implements FitCheck {
    /** Those whose distal end lies where a second wire beside a shaft matters; a sheath ends far before. */
    private static final Set<DeviceKind> AROUND = Set.of(DeviceKind.GUIDE_CATHETER, DeviceKind.GUIDE_EXTENSION,
            DeviceKind.INNER_CATHETER);

    @Override
    public boolean concerns(Terms terms) {
        return terms.direction() == Direction.TIP_FIRST && terms.reach().isPresent();
    }

    @Override
    public boolean concerns(Terms terms, ReadDevice inner) {
        return concerns(terms) && inner.device().sidePort().filter(port -> isUnknown(port)
                || port.proximalAt().compareTo(terms.reach().orElseThrow()) < 0).isPresent();
    }

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        boolean asked = question.direction() == Direction.TIP_FIRST && question.reach().isPresent()
                && isAskedIn(question.outer().device().kind());
        Optional<Lumen> port = asked ? question.inner().device().sidePort() : Optional.empty();
        return port.map(lumen -> found(question, lumen)).orElse(Finding.SILENT);
    }

    /** Whether it is asked in outer devices of a kind. */
    public static boolean isAskedIn(DeviceKind outer) {
        return AROUND.contains(outer);
    }

    /**
     * What it finds of a port in such a device.
     *
     * @param beyond how far the tip is to come beyond the outer device's
     */
    public static Verdict verdict(Lumen port, Length beyond) {
        if (beyond.compareTo(Length.ZERO) > 0 && isUnknown(port)) {
            return Verdict.UNKNOWN;
        }
        return port.proximalAt().compareTo(beyond) < 0 ? Verdict.TIGHT : Verdict.FITS;
    }

    private static boolean isUnknown(Lumen port) {
        return port.portUnknown() || port.length().equals(Length.ZERO);
    }

    private static Finding found(FitQuestion question, Lumen port) {
        String device = question.inner().device().id();
        Length beyond = question.reach().orElseThrow();
        Verdict verdict = verdict(port, beyond);
        if (verdict == Verdict.UNKNOWN) {
            return Finding.of(verdict, List.of(Reason.of(ReasonCode.PORT_NOT_STATED, Reason.name(device))));
        }
        LengthChain chain = LengthChain.of(LengthChain.Question.PORT_INSIDE,
                new Link(Part.PORT_STATION, device, port.proximalAt()),
                new Link(Part.REACH_ASKED, "", beyond.negated()));
        if (verdict == Verdict.FITS) {
            return Finding.shown(verdict, List.of(), chain);
        }
        return Finding.shown(verdict, List.of(Reason.of(ReasonCode.PORT_OUTSIDE, Reason.name(device),
                Reason.distance(chain.margin().negated()), Reason.distance(port.proximalAt()),
                Reason.distance(beyond))), chain);
    }
}
