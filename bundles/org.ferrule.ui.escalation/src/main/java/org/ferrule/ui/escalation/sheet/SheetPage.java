/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.sheet;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.engine.content.SheetContents;
import org.ferrule.picture.Document;
import org.ferrule.plansheet.page.PlanSheet;
import org.ferrule.plansheet.page.SheetContent;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.escalation.live.PlanListener;
import org.ferrule.ui.escalation.live.PlannedCase;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.fit.page.PageBrowser;

/** The plan as a sheet to take along, as it would be printed; it follows the case, and can be exported. */
public final class SheetPage extends DocumentPage implements PlanListener {

    /** Id of the page. */
    public static final String ID = "sheet";

    private static final PaperFormat PAPER = new PaperFormat(PaperFormat.Size.A4, false);

    private final LivePlan live;
    private PageBrowser browser;
    private LatestWork work;
    private Document sheet;

    /** Creates the page. */
    public SheetPage(DocumentEditor editor, LivePlan live) {
        super(editor, ID, "Sheet");
        this.live = live;
    }

    @Override
    protected void fill(IManagedForm form) {
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(8, 6).applyTo(body);
        browser = new PageBrowser(body, this::export);
        GridDataFactory.fillDefaults().grab(true, true).hint(120, 120).applyTo(browser.control());
        work = new LatestWork(browser.control(), "Lay out the plan sheet");
        live.addListener(this);
        body.addDisposeListener(event -> live.removeListener(this));
        browser.clear("The case has not been planned yet.");
        planChanged();
    }

    @Override
    public void setActive(boolean active) {
        super.setActive(active);
        if (active) {
            planChanged();
        }
    }

    @Override
    public void planChanged() {
        if (isActive() && !live.stale()) {
            live.shown().map(SheetPage::content).ifPresent(content -> work.start(() -> Laid.out(content), this::show));
        }
    }

    @Override
    public void orderExplained() {
        planChanged();
    }

    private static SheetContent content(PlannedCase planned) {
        SheetContent content = SheetContents.of(planned.open(), planned.assembled(), planned.plan(), PAPER,
                LocalDate.now());
        return planned.reasons().map(content::with).orElse(content);
    }

    private void show(Laid laid) {
        sheet = laid.sheet().orElse(null);
        laid.sheet().ifPresentOrElse(pages -> browser.show(pages.pages()), () -> browser.clear(laid.problem()));
    }

    private void export() {
        if (sheet != null) {
            new SheetExport(getSite().getShell(), session().file()).ask(sheet);
        }
    }

    /** Returns the sheet as it is shown; nothing before there is one. */
    public Optional<Document> sheet() {
        return Optional.ofNullable(sheet);
    }

    /** A sheet, or why there is none. */
    private record Laid(Optional<Document> sheet, String problem) {

        static Laid out(SheetContent content) {
            try {
                return new Laid(Optional.of(PlanSheet.of(content, OffsetDateTime.now())), "");
            } catch (IllegalArgumentException e) {
                return new Laid(Optional.empty(), e.getMessage());
            }
        }
    }
}
