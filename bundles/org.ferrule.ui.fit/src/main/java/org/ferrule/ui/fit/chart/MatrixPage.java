/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.ui.Services;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.fit.answer.PairSelectionProvider;
import org.ferrule.ui.fit.matrix.MatrixContent;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.preferences.UnitPreferences;

/** The page with the live matrix. */
public final class MatrixPage extends DocumentPage implements AnswersListener {

    /** Id of the page. */
    public static final String ID = "matrix";

    private static final int LEAST_HEIGHT = 120;

    private final PairSelectionProvider selection = new PairSelectionProvider();
    private final MatrixContent content = new MatrixContent();
    private final UnitPreferences units = Services.get(UnitPreferences.class);
    private final Runnable unitFollower = this::unitsChanged;
    private final LiveAnswers answers;
    private MatrixTable table;
    private MatrixBar bar;
    private ProblemStrip problems;

    MatrixPage(FitChartEditor editor) {
        super(editor, ID, "Matrix");
        answers = editor.answers();
    }

    @Override
    protected void fill(IManagedForm form) {
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(8, 6).spacing(0, 6).applyTo(body);
        problems = new ProblemStrip(body, form.getToolkit());
        bar = new MatrixBar(body);
        table = new MatrixTable(body, content);
        GridDataFactory.fillDefaults().grab(true, true).hint(LEAST_HEIGHT, LEAST_HEIGHT).applyTo(table.control());
        bar.connect(table);
        table.onSelect(() -> selection.select(table.selected()));
        new MatrixMenu(table, bar, session()).install();
        new CopyHandling(getSite(), table).install();
        getSite().setSelectionProvider(selection);
        follow();
    }

    private void follow() {
        answers.addListener(this);
        units.addListener(unitFollower);
        table.control().addDisposeListener(event -> {
            answers.removeListener(this);
            units.removeListener(unitFollower);
        });
        answers.shown().ifPresent(solved -> answered(solved, false));
        answersChanged();
    }

    private void unitsChanged() {
        table.control().getDisplay().asyncExec(() -> {
            if (!table.control().isDisposed()) {
                table.unitsChanged();
            }
        });
    }

    /** Returns the matrix. */
    public MatrixTable table() {
        return table;
    }

    @Override
    public void setFocus() {
        table.control().setFocus();
    }

    @Override
    public void answered(SolvedChart solved, boolean onlyChanges) {
        table.show(solved, onlyChanges);
        bar.showCounts(content);
    }

    @Override
    public void answersChanged() {
        if (answers.stale()) {
            table.await();
        }
        problems.show(answers.problems(), answers.stale());
    }

    /** Selects the cell of two lines; tells whether it is shown. */
    public boolean reveal(String outerKey, String innerKey) {
        content.asInChart();
        table.refresh();
        bar.showFilters();
        return table.select(outerKey, innerKey);
    }
}
