/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.ChartProblem;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.signoff.SignOffComparison;
import org.ferrule.engine.signoff.SignOffState;
import org.ferrule.engine.signoff.SignOffWords;
import org.ferrule.engine.signoff.SignedVerdicts;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.matrix.SolveCancelledException;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.FileReferences;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.RuleSet;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.document.DocumentRecord;
import org.ferrule.ui.fit.chart.AnswersInEditors;
import org.ferrule.ui.fit.signoff.StoredHashes;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemRequest;
import org.ferrule.ui.problem.ProblemSource;

/** Finds what a chart refers to in vain, and what is doubtful in its answers. */
public final class ChartProblems implements ProblemSource {

    private final SolvedCharts kept = new SolvedCharts();

    @Override
    public List<FoundProblem> find(ProblemRequest request, IProgressMonitor monitor) throws CoreException {
        Optional<Document> document = request.record().document();
        return document.isPresent() && document.get() instanceof FitChart chart
                ? new Run(request, chart, monitor, kept).problems() : List.of();
    }

    /** One look at one chart. */
    private static final class Run {

        private final List<FoundProblem> found = new ArrayList<>();
        private final ProblemRequest request;
        private final FitChart chart;
        private final IProgressMonitor monitor;
        private final SolvedCharts kept;

        Run(ProblemRequest request, FitChart chart, IProgressMonitor monitor, SolvedCharts kept) {
            this.kept = kept;
            this.request = request;
            this.chart = chart;
            this.monitor = monitor;
        }

        List<FoundProblem> problems() throws CoreException {
            List<LibraryReader> libraries = libraries();
            Optional<RuleSet> rules = rules();
            if (rules.isPresent()) {
                solve(new OpenChart(chart, libraries, rules.get()));
            }
            return found;
        }

        private List<LibraryReader> libraries() throws CoreException {
            List<LibraryReader> readers = new ArrayList<>();
            for (String path : chart.getLibraries()) {
                document(path, DeviceLibrary.class).ifPresentOrElse(
                        library -> readers.add(new LibraryReader(path, library)),
                        () -> error("chart.library", ModelPackage.Literals.FIT_CHART__LIBRARIES,
                                "The library \"" + path + "\" " + lack(path)));
            }
            return readers;
        }

        private Optional<RuleSet> rules() throws CoreException {
            String path = chart.getRules();
            Optional<RuleSet> rules = path == null ? Optional.empty() : document(path, RuleSet.class);
            if (rules.isEmpty()) {
                error("chart.rules", ModelPackage.Literals.FIT_CHART__RULES, path == null
                        ? "The chart names no rule set, so nothing can be answered"
                        : "The rule set \"" + path + "\" " + lack(path) + ", so nothing can be answered");
            }
            return rules;
        }

        private <D> Optional<D> document(String path, Class<D> type) throws CoreException {
            return request.referenced(path).flatMap(DocumentRecord::document).filter(type::isInstance).map(type::cast);
        }

        private String lack(String path) {
            try {
                return request.referenced(path).isPresent() ? "cannot be read: see its own problems" : "is not there";
            } catch (CoreException e) {
                return "cannot be read: " + e.getStatus().getMessage();
            }
        }

        private void error(String code, EStructuralFeature feature, String message) {
            found.add(FoundProblem.at(request.record(), chart, feature, Severity.ERROR, code, message));
        }

        private void solve(OpenChart open) throws CoreException {
            try {
                SolvedChart solved = solved(open);
                solved.chart().problems().forEach(this::add);
                addSignOff(solved);
                found.addAll(new AnswerProblems(request.record(), chart, solved).all(monitor::isCanceled));
            } catch (RuleSetException e) {
                error("chart.rules", ModelPackage.Literals.FIT_CHART__RULES, e.getMessage());
            } catch (SolveCancelledException e) {
                found.clear();
            }
        }

        private void addSignOff(SolvedChart solved) throws CoreException {
            Optional<SignedVerdicts> signed = SignedVerdicts.of(chart);
            if (signed.isPresent()) {
                SignOffState state = new SignOffComparison(signed.get(), solved,
                        new StoredHashes(request.record().file()).of(saved())).compare();
                if (!state.upToDate()) {
                    found.add(FoundProblem.at(request.record(), chart, ModelPackage.Literals.FIT_CHART__SIGN_OFF,
                            Severity.WARNING, "chart.signOff", new SignOffWords().head(state)));
                }
            }
        }

        private List<String> saved() throws CoreException {
            List<String> saved = new ArrayList<>();
            for (String path : FileReferences.of(chart)) {
                if (request.referenced(path).filter(record -> !record.live()).isPresent()) {
                    saved.add(path);
                }
            }
            return saved;
        }

        /** The editor of the chart, if there is one, has its answers already. */
        private SolvedChart solved(OpenChart open) {
            IFile file = request.record().file();
            return AnswersInEditors.of(file, monitor::isCanceled).orElseGet(() -> kept.of(file, open,
                    () -> open.solve(Extensions.ofPlatform().checks(), new MonitorProgress(monitor))));
        }

        private void add(ChartProblem problem) {
            ChartPlace place = ChartPlace.of(chart, problem);
            found.add(FoundProblem.at(request.record(), place.object(), place.feature(), Severity.ERROR,
                    "chart." + problem.place(), problem.message()));
        }
    }
}
