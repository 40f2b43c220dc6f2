/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * Reads what the papers of both devices claim of the pair. Label is compared with label, without tolerances. A "yes"
 * holds only where everything that the claim states matches; a "no" holds for every harder condition too.
 */
final class ClaimReader {
    private final FitQuestion question;
    private final Surrounding surrounding;
    private final Scope scope;
    private final List<Statement> statements;

    private ClaimReader(FitQuestion question, Phase phase, Surrounding surrounding, List<Statement> statements) {
        this.question = question;
        this.surrounding = surrounding;
        this.scope = new Scope(question, phase, surrounding);
        this.statements = statements;
    }

    static Statements read(FitQuestion question, Phase phase) {
        List<Statement> statements = new ArrayList<>();
        for (Surrounding surrounding : Surrounding.of(question)) {
            new ClaimReader(question, phase, surrounding, statements).readAll();
        }
        return new Statements(statements);
    }

    private void readAll() {
        Device outer = surrounding.device();
        Device inner = question.inner().device();
        inner.claims().forEach(claim -> read(claim, inner, outer, Claim.Type.MINIMUM_LUMEN));
        outer.claims().forEach(claim -> read(claim, outer, inner, Claim.Type.LARGEST_DEVICE));
        TakenWire.claim(outer, surrounding.lumen())
                .ifPresent(claim -> read(claim, outer, inner, Claim.Type.LARGEST_DEVICE));
    }

    /** Reads a claim; of those that compare diameters only the type counts that fits the claimant's place. */
    private void read(Claim claim, Device claimant, Device partner, Claim.Type comparison) {
        if (speaksOf(claim, partner)) {
            answer(claim, claimant, comparison).filter(s -> holds(claim, s.yes())).ifPresent(statements::add);
        }
    }

    private static boolean speaksOf(Claim claim, Device partner) {
        if (claim.devices().contains(partner.id())) {
            return true;
        }
        boolean kindMatches = claim.kinds().isEmpty() || claim.kinds().contains(partner.kind());
        boolean sizeMatches = claim.sizes().isEmpty() || claim.sizes().contains(partner.size());
        return claim.devices().isEmpty() && kindMatches && sizeMatches;
    }

    private boolean holds(Claim claim, boolean yes) {
        return scope.holds(yes, claim.covers(), claim.wire(), claim.besideOthers()) && (!yes || claim.isScoped());
    }

    private Optional<Statement> answer(Claim claim, Device claimant, Claim.Type comparison) {
        if (claim.type() == Claim.Type.COMPATIBLE || claim.type() == Claim.Type.NOT_COMPATIBLE) {
            return Optional.of(named(claim, claimant, claim.type() == Claim.Type.COMPATIBLE));
        }
        return claim.type() == comparison ? compared(claim, claimant) : Optional.empty();
    }

    private static Statement named(Claim claim, Device claimant, boolean yes) {
        ReasonCode code = yes ? ReasonCode.CLAIM_NAMES_PARTNER : ReasonCode.CLAIM_EXCLUDES_PARTNER;
        return new Statement(yes, Reason.of(code, Reason.name(claimant.id()), Reason.source(claim.source())),
                claim.source());
    }

    private Optional<Statement> compared(Claim claim, Device claimant) {
        boolean ofLumen = claim.type() == Claim.Type.MINIMUM_LUMEN;
        Optional<Labels.Label> label = ofLumen ? Labels.ofLumen(surrounding.lumen()) : Labels.ofWhatEnters(question);
        Dimension value = claim.value().orElseThrow();
        if (label.isEmpty() || !value.readable()) {
            return Optional.empty();
        }
        int order = label.get().extreme().compareTo(value.label());
        boolean yes = ofLumen ? order >= 0 : order <= 0;
        return yes && !label.get().complete() ? Optional.empty()
                : Optional.of(compared(claim, claimant, label.get().extreme(), yes));
    }

    private static Statement compared(Claim claim, Device claimant, Length label, boolean yes) {
        return new Statement(yes,
                Reason.of(yes ? ReasonCode.CLAIM_SAYS_YES : ReasonCode.CLAIM_SAYS_NO, Reason.name(claimant.id()),
                        Reason.diameter(label), Reason.name(claim.value().orElseThrow().text()),
                        Reason.source(claim.source())),
                claim.source());
    }
}
