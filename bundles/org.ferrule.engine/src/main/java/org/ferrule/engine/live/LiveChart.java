/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.live;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;

import org.eclipse.emf.common.notify.Notification;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.Change;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.AssembledChart;
import org.ferrule.engine.chart.ChartAssembler;
import org.ferrule.engine.chart.ChartProblem;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.matrix.SolveCancelledException;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.FitChart;

/**
 * A chart that follows its documents: every edit of the chart, its libraries or its rule set leads to a new answer. The
 * model is read on its own thread, solving happens elsewhere on immutable copies, and several edits in a row are
 * answered once. All methods are called on the model's thread.
 */
public final class LiveChart implements AutoCloseable {
    private final FitChart chart;
    private final ChartDocuments documents;
    private final Executor modelThread;
    private final Executor solverThread;
    private final ChartListener listener;
    private final ChartAssembler assembler;
    private final Map<String, LibraryReader> libraries = new LinkedHashMap<>();
    private final Listening listening = new Listening();
    private org.ferrule.model.RuleSet ruleDocument;
    private RuleSet rules;
    private FitMatrix lastMatrix;
    private boolean assemblyDue;
    private boolean closed;
    private volatile int generation;

    /**
     * Begins to follow; the first answer comes like every other.
     *
     * @param modelThread runs tasks later on the model's thread
     * @param solverThread runs tasks elsewhere, one after the other
     */
    public LiveChart(FitChart chart, ChartDocuments documents, List<FitCheck> checks, Executor modelThread,
            Executor solverThread, ChartListener listener) {
        this.chart = chart;
        this.documents = documents;
        this.modelThread = modelThread;
        this.solverThread = solverThread;
        this.listener = listener;
        this.assembler = new ChartAssembler(checks);
        listening.follow(chart, this::chartChanged);
        documentsChanged();
    }

    /** Looks for the chart's documents anew: one was opened, replaced or lost. */
    public void documentsChanged() {
        libraries.clear();
        listening.forgetAllBut(chart);
        rules = null;
        ruleDocument = null;
        due();
    }

    @Override
    public void close() {
        closed = true;
        generation++;
        listening.forgetAll();
    }

    private void chartChanged(Notification notification) {
        boolean otherDocuments = ChartReferences.isReference(notification);
        if (otherDocuments) {
            documentsChanged();
        } else {
            due();
        }
    }

    private void due() {
        generation++;
        listener.stale();
        if (!assemblyDue) {
            assemblyDue = true;
            modelThread.execute(this::assemble);
        }
    }

    private void assemble() {
        assemblyDue = false;
        if (closed) {
            return;
        }
        List<ChartProblem> problems = new ArrayList<>();
        Optional<RuleSet> readRules = readRules(problems);
        List<LibraryReader> readers = readers(problems);
        if (readRules.isEmpty()) {
            listener.failed(problems);
            return;
        }
        try {
            solveLater(assembler.assemble(chart, Catalogue.of(readers), readRules.get()), problems);
        } catch (RuleSetException e) {
            problems.add(new ChartProblem("rules", e.getMessage()));
            listener.failed(problems);
        }
    }

    private Optional<RuleSet> readRules(List<ChartProblem> problems) {
        if (rules == null) {
            Optional<org.ferrule.model.RuleSet> document = chart.getRules() == null ? Optional.empty()
                    : documents.rules(chart.getRules());
            if (document.isEmpty()) {
                problems.add(ChartReferences.missingRules(chart));
                return Optional.empty();
            }
            if (document.get() != ruleDocument) {
                ruleDocument = document.get();
                listening.follow(ruleDocument, n -> rulesChanged());
            }
            try {
                rules = RuleTranslator.translate(ruleDocument);
            } catch (RuleSetException e) {
                problems.add(new ChartProblem("rules", e.getMessage()));
            }
        }
        return Optional.ofNullable(rules);
    }

    private void rulesChanged() {
        rules = null;
        due();
    }

    private List<LibraryReader> readers(List<ChartProblem> problems) {
        for (String path : chart.getLibraries()) {
            if (!libraries.containsKey(path)) {
                documents.library(path).ifPresentOrElse(library -> {
                    LibraryReader reader = new LibraryReader(path, library);
                    libraries.put(path, reader);
                    listening.follow(library, n -> libraryChanged(reader, n));
                }, () -> problems.add(ChartReferences.missingLibrary(path)));
            }
        }
        return List.copyOf(libraries.values());
    }

    private void libraryChanged(LibraryReader reader, Notification notification) {
        reader.changed(Change.of(notification));
        due();
    }

    private void solveLater(AssembledChart assembled, List<ChartProblem> problems) {
        int asked = generation;
        AssembledChart complete = assembled.after(problems);
        FitMatrix former = lastMatrix;
        solverThread.execute(() -> solve(complete, former, asked));
    }

    private void solve(AssembledChart assembled, FitMatrix former, int asked) {
        Progress progress = new UntilOutdated(asked);
        try {
            FitMatrix matrix = former == null ? FitMatrix.solve(assembled.question(), progress)
                    : former.resolve(assembled.question(), progress);
            modelThread.execute(() -> publish(new SolvedChart(assembled, matrix), asked));
        } catch (SolveCancelledException e) {
            // a newer edit has asked again; its answer comes instead
        } catch (RuleSetException e) {
            modelThread.execute(() -> publishFailure(e, asked));
        }
    }

    private void publish(SolvedChart solved, int asked) {
        if (asked == generation) {
            lastMatrix = solved.matrix();
            listener.solved(solved);
        }
    }

    private void publishFailure(RuleSetException failure, int asked) {
        if (asked == generation) {
            listener.failed(List.of(new ChartProblem("rules", failure.getMessage())));
        }
    }

    /** Work goes on until a newer edit makes its answer useless. */
    private final class UntilOutdated implements Progress {
        private final int asked;

        UntilOutdated(int asked) {
            this.asked = asked;
        }

        @Override
        public void worked(int done, int total) {
            // solving is too quick to be watched
        }

        @Override
        public boolean isCancelled() {
            return asked != generation;
        }
    }
}
