/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * Whether what cannot bend passes the bends on the way. A bend has no station: it is taken to lie on the way of all
 * that comes to the distal opening, anywhere in the lumen. A part is taken for a cylinder of its largest diameter where
 * it fits, and only a cylinder that lies within it proves that it does not. Silent where no bend is given.
 */
public final class BendCheck implements FitCheck {

    @Override
    public boolean concerns(Terms terms) {
        return !terms.conditions().bends().isEmpty() && terms.direction() == Direction.TIP_FIRST;
    }

    @Override
    public boolean concerns(Terms terms, ReadDevice inner) {
        return concerns(terms) && !inner.rigid(Phase.IN).isEmpty();
    }

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        boolean asked = !question.conditions().bends().isEmpty() && question.direction() == Direction.TIP_FIRST;
        return asked ? found(question, phase) : Finding.SILENT;
    }

    private static Finding found(FitQuestion question, Phase phase) {
        Verdict verdict = Verdict.FITS;
        List<Reason> reasons = new ArrayList<>();
        List<Evidence> evidence = new ArrayList<>();
        for (RigidPart part : partsOnTheWay(question, phase)) {
            for (Bend bend : question.conditions().bends()) {
                Finding finding = finding(question, phase, part, bend);
                verdict = verdict.worse(finding.verdict());
                reasons.addAll(finding.reasons());
                evidence.addAll(finding.evidence());
            }
        }
        return new Finding(verdict, Optional.empty(), Optional.empty(), Optional.empty(), reasons, evidence);
    }

    private static List<RigidPart> partsOnTheWay(FitQuestion question, Phase phase) {
        Length opening = opening(question);
        return RigidPart.of(question.inner(), outline(question, phase)).stream()
                .filter(part -> part.surelyComesTo(opening, question) || question.travel().isEmpty()).toList();
    }

    /** A device that was inflated before has its outline after use in both directions. */
    private static Phase outline(FitQuestion question, Phase phase) {
        return question.conditions().afterInflation() ? Phase.OUT : phase;
    }

    /** How far the nearer of both openings, the outer device's and that of an extension in it, lies from the entry. */
    private static Length opening(FitQuestion question) {
        Length protrusion = question.conditions().through().map(t -> t.protrusion().min(Length.ZERO))
                .orElse(Length.ZERO);
        return question.lumen().length().plus(protrusion);
    }

    private static Finding finding(FitQuestion question, Phase phase, RigidPart part, Bend bend) {
        if (bend.where() == Bend.Where.VESSEL) {
            return VesselBend.finding(part, bend);
        }
        Finding finding = new LumenBend(part, FreeLumen.of(question, phase), bend, requiredClearance(question))
                .finding();
        boolean mayNotCome = !part.surelyComesTo(opening(question), question);
        return finding.verdict() != Verdict.FITS && mayNotCome ? lengthNotStated(question) : finding;
    }

    private static Length requiredClearance(FitQuestion question) {
        return question.conditions().through()
                .map(t -> question.rules().clearance(t.extension().device().kind(), question.inner().device().kind())
                        .required())
                .orElseGet(question::requiredClearance);
    }

    private static Finding lengthNotStated(FitQuestion question) {
        return Finding.of(Verdict.UNKNOWN, List.of(
                Reason.of(ReasonCode.LENGTH_NOT_STATED, Reason.name(question.inner().device().id()))));
    }
}
