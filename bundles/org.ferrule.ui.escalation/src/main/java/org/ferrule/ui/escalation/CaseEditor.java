/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation;

import org.eclipse.ui.PartInitException;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.escalation.form.CasePage;
import org.ferrule.ui.escalation.ladder.LadderPage;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.escalation.sheet.SheetPage;

/** The editor of cases: the ladder that is planned for it, and what is stated about it. */
public final class CaseEditor extends DocumentEditor {

    private LivePlan live;
    private LadderPage ladder;

    @Override
    protected void addDocumentPages() throws PartInitException {
        endPlan();
        live = new LivePlan(session());
        ladder = new LadderPage(this, live);
        addPage(ladder);
        addPage(new CasePage(this, live));
        addPage(new SheetPage(this, live));
    }

    /** Returns the plan, as it stands now. */
    public LivePlan live() {
        return live;
    }

    /** Shows the step of a technique or a set-up in the ladder, as soon as there is a plan. */
    public void showStep(String move) {
        setActivePage(LadderPage.ID);
        ladder.select(move);
    }

    /** Returns the page with the ladder. */
    public LadderPage ladder() {
        return ladder;
    }

    @Override
    public void setFocus() {
        if (ladder != null && getActivePageInstance() == ladder) {
            ladder.setFocus();
        } else {
            super.setFocus();
        }
    }

    private void endPlan() {
        if (live != null) {
            live.close();
            live = null;
        }
    }

    @Override
    public void dispose() {
        endPlan();
        super.dispose();
    }
}
