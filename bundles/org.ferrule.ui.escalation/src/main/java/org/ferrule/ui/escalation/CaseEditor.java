/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation;

import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.forms.editor.IFormPage;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.SessionListener;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.escalation.form.CasePage;
import org.ferrule.ui.escalation.ladder.LadderPage;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.escalation.record.RecordPage;
import org.ferrule.ui.escalation.sheet.SheetPage;

/** The editor of cases: the ladder that is planned for it, and what is stated about it. */
public final class CaseEditor extends DocumentEditor {

    private final SessionListener follower = new Follower();
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
        live.session().addListener(follower);
        showRecord();
    }

    /** The page of the record is there while the case is closed: closing adds it, undoing takes it away. */
    private void showRecord() {
        boolean closed = live.file().filter(file -> file.getClosing() != null).isPresent();
        IFormPage record = findPage(RecordPage.ID);
        if (closed && record == null) {
            try {
                addPage(new RecordPage(this, live));
            } catch (PartInitException e) {
                ILog.of(CaseEditor.class).log(e.getStatus());
            }
        } else if (!closed && record != null) {
            if (getActivePageInstance() == record) {
                setActivePage(CasePage.ID);
            }
            removePage(pages.indexOf(record));
        }
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
            live.session().removeListener(follower);
            live.close();
            live = null;
        }
    }

    @Override
    public void dispose() {
        endPlan();
        super.dispose();
    }

    private final class Follower implements SessionListener {

        @Override
        public void documentChanged(DocumentChange change) {
            if (!session().broken()) {
                showRecord();
            }
        }
    }
}
