/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.widgets.Control;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.signoff.SignOffComparison;
import org.ferrule.engine.signoff.SignOffState;
import org.ferrule.engine.signoff.SignedVerdicts;
import org.ferrule.engine.signoff.VerdictChange;
import org.ferrule.model.FileReferences;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.matrix.ShownChanges;

/** Restricts the matrix to what has changed since the last save or the sign-off, and follows both. */
final class ChangeWatch {

    private final DocumentSession session;
    private final LiveAnswers answers;
    private final MatrixTable table;
    private final LatestWork work;
    private final Runnable shown;
    private ChangeBase base = ChangeBase.NONE;
    private SolvedChart saved;

    /**
     * Creates a watch.
     *
     * @param shown is run when other changes are shown
     */
    ChangeWatch(DocumentSession session, LiveAnswers answers, MatrixTable table, Runnable shown) {
        this.session = session;
        this.answers = answers;
        this.table = table;
        this.shown = shown;
        Control control = table.control();
        this.work = new LatestWork(control, "Compare answers with the last save");
    }

    ChangeBase base() {
        return base;
    }

    /** Shows changes since then; since the sign-off only where there is one. */
    void show(ChangeBase since) {
        base = since == ChangeBase.SIGN_OFF && answers.signed().isEmpty() ? ChangeBase.NONE : since;
        refresh();
    }

    /** Shows changes since the last save, then since the sign-off, then all lines again. */
    void showNext() {
        show(ChangeBase.values()[(base.ordinal() + 1) % ChangeBase.values().length]);
    }

    /** There are other answers, or something was saved or signed off. */
    void refresh() {
        if (!unsaved()) {
            saved = answers.shown().orElse(null);
        }
        work.forget();
        switch (base) {
            case NONE -> become(Optional.empty());
            case SIGN_OFF -> become(Optional.of(answers.signed().map(SignOffState::verdicts).orElse(List.of())));
            case LAST_SAVE -> compare();
        }
    }

    private boolean unsaved() {
        return session.dirty() || answers.stale() || answers.chart().stream().map(FileReferences::of)
                .flatMap(paths -> paths.stream()).anyMatch(answers.documents()::unsaved);
    }

    private void compare() {
        SolvedChart before = saved;
        Optional<SolvedChart> now = answers.shown();
        if (before == null || now.isEmpty() || before == now.get()) {
            become(Optional.of(List.of()));
        } else {
            work.start(() -> new SignOffComparison(SignedVerdicts.of(before), now.get(), Map.of()).compare().verdicts(),
                    changes -> become(Optional.of(changes)));
        }
    }

    private void become(Optional<List<VerdictChange>> changes) {
        boolean same = changes.isEmpty() && table.content().changes().isEmpty();
        if (!same) {
            table.content().showOnly(changes.map(ShownChanges::new));
            table.refresh();
        }
        shown.run();
    }
}
