/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;
import org.ferrule.engine.closed.ClosedCase;
import org.ferrule.engine.closed.ClosedCaseText;
import org.ferrule.engine.closed.ClosedCaseWords;
import org.ferrule.engine.closed.RecordTable;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.escalation.live.PlanListener;
import org.ferrule.ui.fit.clip.TextCopy;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** What was recorded when the case was closed: the plan, what happened, what was used, and on which documents it rests. */
public final class RecordPage extends DocumentPage implements PlanListener {

    /** Id of the page. */
    public static final String ID = "record";

    private static final int GAP = 12;
    private static final int LEAST_WIDTH = 200;

    private final DocumentRecords records = Services.get(DocumentRecords.class);
    private final Consumer<IFile> follower = file -> later();
    private final List<RecordSection> sections = new ArrayList<>();
    private final LivePlan live;
    private IManagedForm managed;
    private Composite body;
    private Label head;
    private Label documents;
    private Button copy;
    private LatestWork work;
    private IHandlerActivation copying;
    private ClosedCase closed;

    /** Creates the page. */
    public RecordPage(DocumentEditor editor, LivePlan live) {
        super(editor, ID, "Record");
        this.live = live;
    }

    /** Short, because the notice of a closed case stands beside it, and the head of a page does not wrap. */
    @Override
    protected String heading() {
        return "Record";
    }

    @Override
    protected void fill(IManagedForm form) {
        managed = form;
        body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(GAP, GAP).spacing(0, GAP).applyTo(body);
        createHead(form.getToolkit());
        form.getForm().addListener(SWT.Resize, event -> fit());
        work = new LatestWork(body, "Read the record of the case");
        live.addListener(this);
        records.addListener(follower);
        body.addDisposeListener(event -> forget());
        refresh();
    }

    private void createHead(FormToolkit toolkit) {
        Composite area = toolkit.createComposite(body);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(GAP, 4).applyTo(area);
        head = toolkit.createLabel(area, "Reading the record...", SWT.WRAP);
        head.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        wrapped(head);
        copy = toolkit.createButton(area, "&Copy record", SWT.PUSH);
        copy.setToolTipText("Put the whole record into the clipboard, as text, fingerprints in full (Ctrl+C)");
        GridDataFactory.swtDefaults().align(SWT.END, SWT.BEGINNING).span(1, 2).applyTo(copy);
        copy.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> copy()));
        copy.setEnabled(false);
        documents = toolkit.createLabel(area, "", SWT.WRAP);
        ThemeChange.text(documents, this::documentsColour);
        wrapped(documents);
    }

    private static void wrapped(Label label) {
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).applyTo(label);
    }

    private Color documentsColour() {
        boolean stand = closed == null || new ClosedCaseWords(closed).documentsStand();
        return stand ? Colours.muted() : Colours.error();
    }

    private void forget() {
        live.removeListener(this);
        records.removeListener(follower);
        copyByKey(false);
    }

    @Override
    public void setActive(boolean active) {
        super.setActive(active);
        copyByKey(active);
        if (active) {
            refresh();
        }
    }

    /** Nothing else on the page can be copied. */
    private void copyByKey(boolean active) {
        IHandlerService handlers = getSite().getService(IHandlerService.class);
        if (active && copying == null) {
            copying = handlers.activateHandler(IWorkbenchCommandConstants.EDIT_COPY, new AbstractHandler() {
                @Override
                public Object execute(ExecutionEvent event) {
                    copy();
                    return null;
                }
            });
        } else if (!active && copying != null) {
            handlers.deactivateHandler(copying);
            copying = null;
        }
    }

    private void copy() {
        text().ifPresent(text -> TextCopy.put(body, text));
    }

    private void later() {
        if (!body.isDisposed()) {
            body.getDisplay().asyncExec(() -> {
                if (!body.isDisposed()) {
                    refresh();
                }
            });
        }
    }

    private void refresh() {
        RecordReading.of(live).ifPresentOrElse(reading -> work.start(reading, this::show), work::forget);
    }

    private void show(ClosedCase next) {
        if (next.equals(closed)) {
            return;
        }
        closed = next;
        ClosedCaseWords words = new ClosedCaseWords(next);
        head.setText(words.head());
        documents.setText(words.documentsInBrief());
        documents.setForeground(documentsColour());
        copy.setEnabled(true);
        List<RecordTable> tables = List.of(words.plan(), words.log(), words.totals(), words.devices(),
                words.documentsInShort());
        while (sections.size() < tables.size()) {
            sections.add(new RecordSection(managed.getToolkit(), body));
        }
        for (int i = 0; i < tables.size(); i++) {
            sections.get(i).show(tables.get(i));
        }
        fit();
    }

    private void fit() {
        int room = managed.getForm().getClientArea().width - 2 * GAP;
        sections.forEach(section -> section.fit(room));
        managed.reflow(true);
    }

    @Override
    public void documentChanged(DocumentChange change) {
        super.documentChanged(change);
        refresh();
    }

    /** Names may have changed in the documents that the case refers to. */
    @Override
    public void planChanged() {
        if (!live.stale()) {
            refresh();
        }
    }

    /** Returns the record as it is shown; nothing before it is read. */
    public Optional<ClosedCase> shown() {
        return Optional.ofNullable(closed);
    }

    /** Returns the record as it is copied. */
    public Optional<String> text() {
        return shown().map(ClosedCaseText::lines).map(lines -> String.join("\n", lines) + "\n");
    }
}
