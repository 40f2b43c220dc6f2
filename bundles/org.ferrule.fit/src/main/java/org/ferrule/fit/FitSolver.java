/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.authority.Judgement;
import org.ferrule.fit.check.EdgeCheck;
import org.ferrule.fit.check.Finding;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.check.LengthCheck;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;

/**
 * Answers fit questions: runs its checks in order, lets claims and bench results have their say, and combines what was
 * found. Immutable and safe to use from many threads.
 */
public final class FitSolver {
    private final List<FitCheck> checks;
    private final BenchIndex bench;

    private FitSolver(List<FitCheck> checks, BenchIndex bench) {
        this.checks = checks;
        this.bench = bench;
    }

    /** A solver with the checks that the kernel brings. */
    public static FitSolver standard(List<BenchResult> bench) {
        return with(List.of(new PassageCheck(), new LengthCheck(), new EdgeCheck()), bench);
    }

    /** A solver with these checks. */
    public static FitSolver with(List<FitCheck> checks, List<BenchResult> bench) {
        return new FitSolver(List.copyOf(checks), BenchIndex.of(bench));
    }

    /** Answers a question. */
    public FitAnswer answer(FitQuestion question) {
        return new FitAnswer(answer(question, Phase.IN), answer(question, Phase.OUT));
    }

    private PhaseAnswer answer(FitQuestion question, Phase phase) {
        List<Finding> yielding = new ArrayList<>();
        List<Finding> standing = new ArrayList<>();
        for (FitCheck check : checks) {
            (check.yieldsToStatements() ? yielding : standing).add(check.check(question, phase));
        }
        Finding geometry = worst(yielding);
        List<BenchResult> tried = bench.of(question.outer().device().id(), question.inner().device().id());
        Judgement judgement = Judgement.of(geometry, tried, question, phase);
        return combined(geometry, judgement, standing);
    }

    private static Finding worst(List<Finding> findings) {
        return findings.stream().reduce((a, b) -> a.verdict().worse(b.verdict()) == a.verdict() ? a : b)
                .orElseGet(() -> Finding.of(Verdict.UNKNOWN, List.of()));
    }

    private static PhaseAnswer combined(Finding geometry, Judgement judgement, List<Finding> standing) {
        List<Reason> reasons = new ArrayList<>(judgement.reasons());
        reasons.addAll(geometry.reasons());
        Verdict verdict = judgement.verdict();
        for (Finding finding : standing) {
            verdict = verdict.worse(finding.verdict());
            reasons.addAll(finding.reasons());
        }
        reasons.sort((a, b) -> a.code().weight().compareTo(b.code().weight()));
        return new PhaseAnswer(verdict, judgement.authority(), geometry.verdict(), geometry.clearance(),
                geometry.limiting(), geometry.reach(), reasons);
    }
}
