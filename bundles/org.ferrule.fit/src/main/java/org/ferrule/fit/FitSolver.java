/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.ferrule.fit.authority.Judgement;
import org.ferrule.fit.check.BendCheck;
import org.ferrule.fit.check.ChanceCheck;
import org.ferrule.fit.check.EdgeCheck;
import org.ferrule.fit.check.ExchangeCheck;
import org.ferrule.fit.check.Finding;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.check.FlowCheck;
import org.ferrule.fit.check.LandingCheck;
import org.ferrule.fit.check.LengthCheck;
import org.ferrule.fit.check.OverlapCheck;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.check.PortCheck;
import org.ferrule.fit.check.ReachCheck;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.Verdict;

/**
 * Answers fit questions: runs its checks in order, lets claims and bench results have their say, and combines what was
 * found. Immutable and safe to use from many threads.
 */
public final class FitSolver {
    /** By verdict, then by clearance: among equals the tighter one decides, in whatever order checks are run. */
    private static final Comparator<Finding> BY_SEVERITY = Comparator.comparing(Finding::verdict)
            .thenComparing(f -> f.clearance().map(c -> c.worst().negated()).orElse(null),
                    Comparator.nullsFirst(Comparator.naturalOrder()));

    private static final Comparator<Reason> BY_WEIGHT = Comparator.comparing(r -> r.code().weight());

    private final List<FitCheck> checks;
    private final BenchIndex bench;

    private FitSolver(List<FitCheck> checks, BenchIndex bench) {
        this.checks = List.copyOf(checks);
        this.bench = bench;
    }

    /** A solver with the checks that the kernel brings. */
    public static FitSolver standard(List<BenchResult> bench) {
        return with(List.of(new PassageCheck(), new LengthCheck(), new EdgeCheck(), new BendCheck(), new ReachCheck(),
                new PortCheck(), new OverlapCheck(), new ExchangeCheck(), new LandingCheck(), new FlowCheck(),
                new ChanceCheck()), bench);
    }

    /** A solver with these checks. */
    public static FitSolver with(List<FitCheck> checks, List<BenchResult> bench) {
        return new FitSolver(checks, BenchIndex.of(bench));
    }

    /** The solver for cells of a matrix: without the checks that find nothing there. */
    public FitSolver forCells(Terms terms) {
        return new FitSolver(checks.stream().filter(check -> check.inMatrix() && check.concerns(terms)).toList(),
                bench);
    }

    /** Its checks, in the order in which they are run. */
    public List<FitCheck> checks() {
        return checks;
    }

    /** The bench results that it knows, in no particular order. */
    public List<BenchResult> bench() {
        return bench.all();
    }

    /** The same solver for single questions: its verdicts are the same, and it may take longer to show more. */
    public FitSolver inDetail() {
        return new FitSolver(checks.stream().map(FitCheck::inDetail).toList(), bench);
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
        Finding geometry = geometry(yielding);
        Judgement judgement = Judgement.of(geometry, tried(question), question, phase);
        return combined(geometry, judgement, standing);
    }

    /** What was tried of the pair, and of the device in the extension that it goes through. */
    private List<BenchResult> tried(FitQuestion question) {
        String inner = question.inner().device().id();
        List<BenchResult> tried = bench.of(question.outer().device().id(), inner);
        return question.conditions().through().map(t -> bench.of(t.extension().device().id(), inner))
                .map(inExtension -> Stream.concat(tried.stream(), inExtension.stream()).toList()).orElse(tried);
    }

    /** The finding that decides, with the reasons of all; without any finding nothing is known. */
    private static Finding geometry(List<Finding> findings) {
        Finding decides = findings.stream().max(BY_SEVERITY).orElseGet(() -> Finding.of(Verdict.UNKNOWN, List.of()));
        List<Reason> reasons = new ArrayList<>(decides.reasons());
        findings.stream().filter(f -> f != decides).forEach(f -> reasons.addAll(f.reasons()));
        List<Evidence> evidence = findings.stream().flatMap(f -> f.evidence().stream()).toList();
        return new Finding(decides.verdict(), decides.clearance(), decides.limiting(), decides.reach(), reasons,
                evidence);
    }

    private static PhaseAnswer combined(Finding geometry, Judgement judgement, List<Finding> standing) {
        Verdict verdict = judgement.verdict();
        List<Reason> before = new ArrayList<>();
        List<Reason> after = new ArrayList<>();
        for (Finding finding : standing) {
            boolean isWorse = finding.verdict().compareTo(judgement.verdict()) > 0;
            (isWorse ? before : after).addAll(finding.reasons());
            verdict = verdict.worse(finding.verdict());
        }
        List<Evidence> evidence = new ArrayList<>(geometry.evidence());
        standing.forEach(finding -> evidence.addAll(finding.evidence()));
        return new PhaseAnswer(verdict, judgement.authority(), geometry.verdict(), geometry.clearance(),
                geometry.limiting(), geometry.reach(),
                inOrder(before, judgement.reasons(), geometry.reasons(), after), evidence);
    }

    @SafeVarargs
    private static List<Reason> inOrder(List<Reason>... parts) {
        List<Reason> reasons = new ArrayList<>();
        for (List<Reason> part : parts) {
            part.stream().filter(reason -> !reasons.contains(reason)).forEach(reasons::add);
        }
        reasons.sort(BY_WEIGHT);
        return reasons;
    }
}
