/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.Filling;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.rules.Limits.FlowLimit;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.flow.OpenFraction;

/**
 * The flow that is left in the lumen which the moving device shares with its wire and with what lies there already,
 * where it is least, as a share of the empty lumen's. Cautions only, against the limits of the rule set; silent where it
 * gives none.
 * <p>
 * For one device the interval over all its positions is exact and quick. For several it takes a search of up to a tenth
 * of a second, so only {@linkplain #inDetail() in detail}; else only what is proved is told: that even the thickest
 * alone leaves too little. The cells of a matrix do without it.
 */
public final class FlowCheck implements FitCheck {
    /** Those through which contrast is given and pressure is read. */
    private static final Set<DeviceKind> CARRY = Set.of(DeviceKind.GUIDE_CATHETER, DeviceKind.GUIDE_EXTENSION,
            DeviceKind.INNER_CATHETER);

    private final Flows flows;
    private final boolean detailed;

    /** The quick check. */
    public FlowCheck() {
        this(new Flows(), false);
    }

    private FlowCheck(Flows flows, boolean detailed) {
        this.flows = flows;
        this.detailed = detailed;
    }

    @Override
    public FitCheck inDetail() {
        return new FlowCheck(flows, true);
    }

    /** A place with what it leaves. */
    private record Left(Filling filling, OpenFraction open, boolean searched) {
    }

    @Override
    public boolean inMatrix() {
        return false;
    }

    @Override
    public Finding check(FitQuestion question, Phase phase) {
        List<FlowLimit> limits = question.rules().limits().flow();
        if (limits.isEmpty() || question.direction() != Direction.TIP_FIRST || !flowsBeside(question)) {
            return Finding.SILENT;
        }
        return least(question, phase).map(left -> found(left, limits)).orElse(Finding.SILENT);
    }

    /** Whether contrast goes past the inner device, and not through it. */
    private static boolean flowsBeside(FitQuestion question) {
        return CARRY.contains(question.outer().device().kind())
                && !CARRY.contains(question.inner().device().kind());
    }

    /** The place that leaves least at best; absent when nothing is known of one, or something does not fit at all. */
    private Optional<Left> least(FitQuestion question, Phase phase) {
        Optional<Left> least = Optional.empty();
        for (Filling filling : Filling.worst(question, phase)) {
            boolean search = detailed || filling.devices().size() <= 1;
            Optional<OpenFraction> open = search ? flows.of(filling) : flows.ofThickest(filling);
            if (open.isEmpty()) {
                return Optional.empty();
            }
            Left left = new Left(filling, open.get(), search);
            least = least.filter(known -> known.open().high() <= left.open().high()).or(() -> Optional.of(left));
        }
        return least;
    }

    private static Finding found(Left left, List<FlowLimit> limits) {
        List<Reason> reasons = new ArrayList<>();
        for (FlowLimit limit : limits) {
            double asked = limit.least().doubleValue();
            if (left.open().high() < asked) {
                reasons.add(caution(ReasonCode.FLOW_TOO_LOW, limit, left.open().high()));
            } else if (left.searched() && left.open().low() < asked) {
                reasons.add(caution(ReasonCode.FLOW_MAY_BE_LOW, limit, left.open().low()));
            }
        }
        Evidence[] evidence = left.searched() ? new Evidence[] { evidence(left) } : new Evidence[0];
        return Finding.shown(Verdict.FITS, reasons, evidence);
    }

    private static Reason caution(ReasonCode code, FlowLimit limit, double share) {
        return Reason.of(code, Reason.name(limit.use().word()), Reason.share(share),
                Reason.share(limit.least().doubleValue()), Reason.source(limit.source()));
    }

    private static Evidence evidence(Left left) {
        return new FlowLeft(left.filling().lumenSection(), left.filling().lumen(), left.filling().devices(),
                left.open().low(), left.open().high(), left.open().exact() && left.filling().round());
    }
}
