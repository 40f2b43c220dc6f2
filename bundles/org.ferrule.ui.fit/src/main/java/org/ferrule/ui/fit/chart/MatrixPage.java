/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.fit.answer.PairSelectionProvider;
import org.ferrule.ui.fit.beside.SidePart;
import org.ferrule.ui.fit.card.CellCard;
import org.ferrule.ui.fit.matrix.MatrixContent;
import org.ferrule.ui.fit.matrix.MatrixState;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.proposal.LibraryDevices;
import org.ferrule.ui.fit.proposal.ReferencePickers;
import org.ferrule.ui.fit.setup.ConditionSection;
import org.ferrule.ui.fit.signoff.SignOffSection;
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
    private SearchBar search;
    private ChangeWatch changes;
    private ChangeStrip changeStrip;
    private ProblemStrip problems;
    private SidePart side;
    private CellCard card;
    private SignOffStrip signed;
    private SignOffSection signOff;

    MatrixPage(FitChartEditor editor) {
        super(editor, ID, "Matrix");
        answers = editor.answers();
    }

    @Override
    protected void fill(IManagedForm form) {
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(8, 6).spacing(0, 6).applyTo(body);
        problems = new ProblemStrip(body, form.getToolkit());
        changeStrip = new ChangeStrip(body, form.getToolkit(), () -> changes.show(ChangeBase.NONE));
        signed = new SignOffStrip(body, form.getToolkit(), this::showChanges);
        bar = new MatrixBar(body);
        search = new SearchBar(body);
        SashForm parts = new SashForm(body, SWT.HORIZONTAL | SWT.SMOOTH);
        form.getToolkit().adapt(parts);
        GridDataFactory.fillDefaults().grab(true, true).hint(LEAST_HEIGHT, LEAST_HEIGHT).applyTo(parts);
        table = new MatrixTable(parts, content);
        side = new SidePart(parts, form.getToolkit());
        side.fillWith(this::addSections);
        bar.connect(table, side, this::showNextChanges);
        search.connect(table);
        changes = new ChangeWatch(session(), answers, table, this::changesShown);
        table.selection().onChange(() -> selection.select(table.selection().pairs()));
        new MatrixMenu(table, bar, session()).install();
        table.lines().onMove(new LineMoves(session(), table));
        card = new CellCard(table);
        new MatrixActs(this, session()).install(getSite());
        getSite().setSelectionProvider(selection);
        follow();
    }

    /** Returns the bar above the matrix. */
    MatrixBar bar() {
        return bar;
    }

    /** Returns the bar in which a device is searched. */
    SearchBar search() {
        return search;
    }

    /** Returns what restricts the matrix to what has changed. */
    ChangeWatch changes() {
        return changes;
    }

    private void showNextChanges() {
        changes.showNext();
    }

    private void changesShown() {
        changeStrip.show(changes.base(), content.changes());
        bar.showTools();
    }

    /** Returns what of the look of the matrix the chart has no place for. */
    MatrixState state() {
        return new MatrixState(content);
    }

    /** Returns the card that explains a cell. */
    public CellCard card() {
        return card;
    }

    private void addSections() {
        LibraryDevices devices = ((FitChartEditor) getEditor()).devices();
        ReferencePickers pickers = new ReferencePickers(devices, session().file(), getSite().getShell());
        side.add(ConditionSection.create(session(), side.managed(), side.body(), devices, pickers));
        signOff = new SignOffSection(session(), answers, side.managed(), side.body(), this::reveal);
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
        signedChanged();
    }

    private void showChanges() {
        bar.showBeside(true);
        // its fields find their places in a later turn of the display
        table.control().getDisplay().asyncExec(() -> {
            if (!table.control().isDisposed()) {
                signOff.setFocus();
            }
        });
    }

    @Override
    public void signedChanged() {
        signed.show(answers.signed());
        changes.refresh();
    }

    /** Returns what is said of the changes to which the matrix is restricted; empty while all lines are shown. */
    public String changesText() {
        return changeStrip.text();
    }

    /** Returns what the head of the matrix says of the sign-off; empty where there is none. */
    public String signedText() {
        return signed.text();
    }

    /** Returns the section in which the chart is signed off; null until the part beside the matrix was seen. */
    public SignOffSection signOff() {
        return signOff;
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

    /** Returns what stands beside the matrix. */
    public SidePart side() {
        return side;
    }

    @Override
    public void documentChanged(DocumentChange change) {
        super.documentChanged(change);
        side.refresh();
    }

    @Override
    public void setFocus() {
        table.control().setFocus();
    }

    @Override
    public void answered(SolvedChart solved, boolean onlyChanges) {
        table.show(solved, onlyChanges);
        bar.showCounts(content);
        changes.refresh();
    }

    @Override
    public void stateChanged() {
        super.stateChanged();
        changes.refresh();
    }

    @Override
    public void documentsSaved() {
        changes.refresh();
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
        if (table.selection().select(outerKey, innerKey)) {
            return true;
        }
        changes.show(ChangeBase.NONE);
        content.showAll(outerKey, innerKey);
        table.refresh();
        bar.showFilters();
        return table.selection().select(outerKey, innerKey);
    }
}
