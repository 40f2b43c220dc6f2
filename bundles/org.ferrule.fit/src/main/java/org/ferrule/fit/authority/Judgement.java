/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.fit.check.Finding;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * A verdict after claims and bench results had their say over geometry. A claim outranks a bench result, which outranks
 * geometry; no "no" is ever overruled, and a "yes" that something contradicts is tight, with the conflict shown.
 *
 * @param verdict what holds
 * @param authority on what it rests
 * @param reasons of statements and conflicts
 */
public record Judgement(Verdict verdict, Authority authority, List<Reason> reasons) {

    public Judgement {
        reasons = List.copyOf(reasons);
    }

    /** Judges what geometry found. */
    public static Judgement of(Finding geometry, List<BenchResult> bench, FitQuestion question, Phase phase) {
        Statements claims = ClaimReader.read(question, phase);
        Statements tried = BenchReader.read(bench, question, phase);
        if (claims.isSilent() && tried.isSilent()) {
            return new Judgement(geometry.verdict(), Authority.GEOMETRY, List.of());
        }
        List<Reason> reasons = new ArrayList<>(claims.reasons(ReasonCode.CLAIMS_DISAGREE));
        reasons.addAll(tried.reasons(ReasonCode.BENCH_RESULTS_DISAGREE));
        if (!claims.isSilent()) {
            return decided(claims, Authority.CLAIM, tried, geometry, reasons);
        }
        return decided(tried, Authority.BENCH, Statements.NONE, geometry, reasons);
    }

    private static Judgement decided(Statements deciding, Authority authority, Statements weaker, Finding geometry,
            List<Reason> reasons) {
        if (deciding.agreesOnYes()) {
            boolean contradicted = addContradictionsOfYes(reasons, weaker, geometry);
            return new Judgement(contradicted ? Verdict.TIGHT : Verdict.FITS, authority, reasons);
        }
        addContradictionsOfNo(reasons, weaker, geometry);
        return new Judgement(Verdict.BLOCKED, authority, reasons);
    }

    private static boolean addContradictionsOfYes(List<Reason> reasons, Statements weaker, Finding geometry) {
        boolean contradicted = geometry.verdict() == Verdict.BLOCKED;
        if (contradicted) {
            reasons.add(Reason.of(ReasonCode.YES_AGAINST_GEOMETRY,
                    Reason.clearance(geometry.clearance().map(Clearance::nominal).orElse(Length.ZERO))));
        }
        if (weaker.no().isPresent()) {
            reasons.add(Reason.of(ReasonCode.CLAIM_AGAINST_BENCH, Reason.source(weaker.no().get().source())));
            contradicted = true;
        }
        return contradicted;
    }

    private static void addContradictionsOfNo(List<Reason> reasons, Statements weaker, Finding geometry) {
        if (geometry.verdict() == Verdict.FITS) {
            reasons.add(Reason.of(ReasonCode.NO_AGAINST_GEOMETRY,
                    Reason.clearance(geometry.clearance().map(Clearance::worst).orElse(Length.ZERO))));
        }
        weaker.yes().filter(s -> weaker.agreesOnYes()).ifPresent(
                s -> reasons.add(Reason.of(ReasonCode.CLAIM_AGAINST_BENCH, Reason.source(s.source()))));
    }
}
