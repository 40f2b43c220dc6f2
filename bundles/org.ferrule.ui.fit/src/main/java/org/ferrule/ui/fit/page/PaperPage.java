/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.page;

import java.time.OffsetDateTime;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.page.ChartPages;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.picture.Document;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.fit.chart.AnswersListener;
import org.ferrule.ui.fit.chart.FitChartEditor;
import org.ferrule.ui.fit.chart.LiveAnswers;

/** The page that shows the chart as it is printed, and exports it. Laid out only while it is looked at. */
public final class PaperPage extends DocumentPage implements AnswersListener {

    /** Id of the page. */
    public static final String ID = "paper";

    private static final int PAUSE_MS = 150;

    private final LiveAnswers answers;
    private final PaperContent paper;
    private final Runnable layOut = this::layOut;
    private PageBrowser browser;
    private Display display;
    private int generation;

    /** Creates the page. */
    public PaperPage(FitChartEditor editor) {
        super(editor, ID, "Paper");
        answers = editor.answers();
        paper = new PaperContent(answers);
    }

    @Override
    protected void fill(IManagedForm form) {
        Composite body = form.getForm().getBody();
        display = body.getDisplay();
        GridLayoutFactory.fillDefaults().margins(8, 6).applyTo(body);
        browser = new PageBrowser(body, this::export);
        GridDataFactory.fillDefaults().grab(true, true).hint(120, 120).applyTo(browser.control());
        answers.addListener(this);
        body.addDisposeListener(event -> answers.removeListener(this));
        layOutSoon();
    }

    @Override
    public void setActive(boolean active) {
        super.setActive(active);
        if (active) {
            layOutSoon();
        }
    }

    @Override
    public void answered(SolvedChart solved, boolean onlyChanges) {
        if (isActive()) {
            layOutSoon();
        }
    }

    @Override
    public void signedChanged() {
        if (isActive()) {
            layOutSoon();
        }
    }

    private void layOutSoon() {
        if (display != null) {
            display.timerExec(PAUSE_MS, layOut);
        }
    }

    private void layOut() {
        if (browser.control().isDisposed()) {
            return;
        }
        int wanted = ++generation;
        paper.now().ifPresentOrElse(content -> layOut(content, wanted),
                () -> browser.clear("The chart has not been answered yet."));
    }

    private void layOut(ChartContent content, int wanted) {
        Job job = Job.createSystem("Lay out the pages of the chart", (ICoreRunnable) monitor -> {
            Document pages = ChartPages.of(content, OffsetDateTime.now());
            display.asyncExec(() -> show(pages, wanted));
        });
        job.schedule();
    }

    private void show(Document pages, int wanted) {
        if (wanted == generation && !browser.control().isDisposed()) {
            browser.show(pages.pages());
        }
    }

    private void export() {
        paper.now().ifPresent(content -> new ChartExport(getSite().getShell(), session().file()).ask(content));
    }

    /** Returns where the pages are shown. */
    public PageBrowser browser() {
        return browser;
    }
}
