/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.swt.widgets.Display;
import org.ferrule.engine.chart.ChartProblem;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.live.ChartListener;
import org.ferrule.engine.live.LiveChart;
import org.ferrule.engine.signoff.SignOffState;
import org.ferrule.model.FitChart;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.SessionListener;
import org.ferrule.ui.fit.signoff.SignOffWatch;
import org.osgi.framework.ServiceRegistration;

/**
 * The answers of the chart of a session, kept up to date while it and the documents that it refers to are edited. When
 * one of those is missing or broken the last good answers stay. To be used on the display's thread only.
 */
public final class LiveAnswers implements AutoCloseable {

    private final List<AnswersListener> listeners = new CopyOnWriteArrayList<>();
    private final DocumentRecords records = Services.get(DocumentRecords.class);
    private final Consumer<IFile> diskFollower = file -> onDisplay(() -> fileChanged(file));
    private final SessionListener sessionFollower = new SessionFollower();
    private final ExecutorService solver = Executors.newSingleThreadExecutor(LiveAnswers::solverThread);
    private final Display display = Display.getCurrent();
    private final DocumentSession session;
    private final SessionDocuments documents;
    private final SignOffWatch signOff;
    private LiveChart live;
    private final ServiceRegistration<LiveAnswers> offer;
    private volatile SolvedChart shown;
    private volatile List<ChartProblem> problems = List.of();
    private volatile boolean stale;
    private boolean skipped;

    /** Begins to follow the chart of the session. */
    public LiveAnswers(DocumentSession session) {
        this.session = session;
        this.documents = new SessionDocuments(session.file(), this::documentsChanged);
        this.signOff = new SignOffWatch(session.file(), documents,
                () -> listeners.forEach(AnswersListener::signedChanged));
        records.addListener(diskFollower);
        session.addListener(sessionFollower);
        offer = AnswersInEditors.offer(this, session.file());
        follow();
    }

    private static Thread solverThread(Runnable work) {
        Thread thread = new Thread(work, "Fit chart solver");
        thread.setDaemon(true);
        return thread;
    }

    private void follow() {
        if (live != null) {
            live.close();
        }
        skipped = true;
        live = chart().map(chart -> new LiveChart(chart, documents, Extensions.ofPlatform().checks(), this::onDisplay,
                solver, new Answers())).orElse(null);
    }

    /** Returns the chart; nothing when its file is broken. */
    public Optional<FitChart> chart() {
        return session.document().filter(FitChart.class::isInstance).map(FitChart.class::cast);
    }

    /** Returns the file of the chart. */
    public IFile file() {
        return session.file();
    }

    /** Returns the documents that the chart refers to, as they stand now. */
    public SessionDocuments documents() {
        return documents;
    }

    /** Returns the last good answers. */
    public Optional<SolvedChart> shown() {
        return Optional.ofNullable(shown);
    }

    /** Returns how the chart stands to its sign-off; nothing where it has none, or before it was compared. */
    public Optional<SignOffState> signed() {
        return signOff.state();
    }

    /** Returns the same for the answers that are shown now, for what leaves the program. */
    public Optional<SignOffState> signedNow() {
        return signOff.now();
    }

    /** Returns what keeps the chart, or a part of it, from being answered. */
    public List<ChartProblem> problems() {
        return problems;
    }

    /** Tells whether what is shown was answered before the last edit. */
    public boolean stale() {
        return stale;
    }

    /** Tells whether another answer is on its way, and nothing is known that keeps it from coming. For every thread. */
    boolean isWorking() {
        return stale && problems.isEmpty();
    }

    /** Adds a listener. */
    public void addListener(AnswersListener listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(AnswersListener listener) {
        listeners.remove(listener);
    }

    private void documentsChanged() {
        if (live != null) {
            live.documentsChanged();
        }
    }

    private void fileChanged(IFile file) {
        if (refersTo(file)) {
            if (documents.cameOrWent(file)) {
                documentsChanged();
            }
            listeners.forEach(AnswersListener::documentsSaved);
        }
    }

    /** Tells whether the chart refers to a file. */
    public boolean refersTo(IFile file) {
        return chart().map(LiveAnswers::references).orElseGet(Stream::empty)
                .anyMatch(path -> DocumentFiles.resolve(session.file(), path).filter(file::equals).isPresent());
    }

    private static Stream<String> references(FitChart chart) {
        return Stream.concat(chart.getLibraries().stream(), Stream.ofNullable(chart.getRules()));
    }

    private void onDisplay(Runnable work) {
        if (!display.isDisposed()) {
            display.asyncExec(work);
        }
    }

    private void becameStale() {
        if (!stale) {
            stale = true;
            listeners.forEach(AnswersListener::answersChanged);
        }
    }

    private void solved(SolvedChart solved) {
        problems = solved.chart().problems();
        if (shown != null && lacksDocument()) {
            skipped = true;
            listeners.forEach(AnswersListener::answersChanged);
            return;
        }
        boolean onlyChanges = shown != null && !skipped;
        skipped = false;
        shown = solved;
        stale = false;
        chart().ifPresent(chart -> signOff.answered(chart, solved));
        listeners.forEach(listener -> listener.answered(solved, onlyChanges));
        listeners.forEach(AnswersListener::answersChanged);
    }

    /** Without one of its libraries a chart would only show less than before. */
    private boolean lacksDocument() {
        return problems.stream().anyMatch(problem -> problem.place().equals("libraries"));
    }

    private void failed(List<ChartProblem> found) {
        problems = List.copyOf(found);
        listeners.forEach(AnswersListener::answersChanged);
    }

    @Override
    public void close() {
        offer.unregister();
        records.removeListener(diskFollower);
        session.removeListener(sessionFollower);
        if (live != null) {
            live.close();
        }
        signOff.close();
        documents.close();
        solver.shutdownNow();
    }

    private final class Answers implements ChartListener {

        @Override
        public void stale() {
            becameStale();
        }

        @Override
        public void solved(SolvedChart solved) {
            LiveAnswers.this.solved(solved);
        }

        @Override
        public void failed(List<ChartProblem> found) {
            LiveAnswers.this.failed(found);
        }
    }

    private final class SessionFollower implements SessionListener {

        @Override
        public void documentChanged(DocumentChange change) {
            if (change.reloaded()) {
                follow();
            }
        }
    }
}
