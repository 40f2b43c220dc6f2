/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableEditor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.ferrule.model.FitChart;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.fit.FitIds;
import org.ferrule.ui.fit.page.PaperPage;
import org.ferrule.ui.fit.problem.PairCode;
import org.ferrule.ui.fit.proposal.LibraryDevices;
import org.ferrule.ui.fit.setup.SetUpPage;
import org.ferrule.ui.problem.ProblemMarkers;

/** The editor of fit charts: the live matrix, what the chart asks, and its pages on paper. */
public final class FitChartEditor extends DocumentEditor implements IPersistableEditor {

    private LiveAnswers answers;
    private MatrixPage matrix;
    private IMemento remembered;

    @Override
    protected void addDocumentPages() throws PartInitException {
        endAnswers();
        answers = new LiveAnswers(session());
        matrix = new MatrixPage(this);
        if (remembered != null) {
            matrix.state().restore(remembered);
        }
        addPage(matrix);
        addPage(new SetUpPage(this));
        addPage(new PaperPage(this));
        showGrounds();
    }

    @Override
    public void saveState(IMemento memento) {
        if (matrix != null) {
            matrix.state().save(memento);
        }
    }

    @Override
    public void restoreState(IMemento memento) {
        remembered = memento;
    }

    /** Brings up the view that explains what will be selected here, but does not take the focus for it. */
    private void showGrounds() {
        try {
            getSite().getPage().showView(FitIds.GROUNDS_VIEW, null, IWorkbenchPage.VIEW_VISIBLE);
        } catch (PartInitException e) {
            ILog.of(FitChartEditor.class).log(e.getStatus());
        }
    }

    @Override
    public void gotoMarker(IMarker marker) {
        Optional<PairCode> pair = PairCode.parse(marker.getAttribute(ProblemMarkers.CODE, ""));
        if (pair.isPresent() && matrix != null) {
            setActivePage(MatrixPage.ID);
            matrix.reveal(pair.get().outerKey(), pair.get().innerKey());
        } else {
            super.gotoMarker(marker);
        }
    }

    @Override
    public void setFocus() {
        if (getActivePageInstance() == matrix && matrix != null) {
            matrix.setFocus();
        } else {
            super.setFocus();
        }
    }

    /** Returns the answers, as they stand now. */
    public LiveAnswers answers() {
        return answers;
    }

    /** Returns the devices of the libraries of the chart, as they stand now. */
    public LibraryDevices devices() {
        return new LibraryDevices(
                () -> answers.chart().map(FitChart::getLibraries).map(List::copyOf).orElse(List.of()),
                path -> answers.documents().library(path));
    }

    /** Returns the page with the matrix. */
    public MatrixPage matrix() {
        return matrix;
    }

    private void endAnswers() {
        if (answers != null) {
            answers.close();
            answers = null;
        }
    }

    @Override
    public void dispose() {
        endAnswers();
        super.dispose();
    }
}
