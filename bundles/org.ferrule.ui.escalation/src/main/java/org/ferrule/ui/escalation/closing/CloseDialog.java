/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.closing;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.ShelfDocument;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.escalation.live.PlannedCase;

/**
 * Shows what closing a case freezes, counts and takes off the shelf, and asks for the day and for what is wanted of it.
 * Where something is missing it says what, and the case stays open.
 */
final class CloseDialog extends TitleAreaDialog {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 560;

    /** Does what was agreed to. */
    @FunctionalInterface
    interface Agreed {
        void close(ClosingReview review, boolean counting, boolean taking);
    }

    private final LivePlan live;
    private final Agreed agreed;
    private final PlannedCase planned;
    private final ClosingDocuments documents;
    private Text day;
    private Text frozen;
    private Button count;
    private Button take;
    private ClosingReview review;

    /**
     * Creates the dialog, which does not block.
     *
     * @param agreed closes the case
     */
    CloseDialog(Shell shell, LivePlan live, Agreed agreed) {
        super(shell);
        this.live = live;
        this.agreed = agreed;
        this.planned = live.shown().orElse(null);
        this.documents = new ClosingDocuments(live);
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setBlockOnOpen(false);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Close case");
    }

    @Override
    protected Point getInitialSize() {
        return new Point(WIDTH, HEIGHT);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(12, 10).spacing(8, 8).applyTo(area);
        setTitle("Close the case");
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label(area, "&Day"));
        day = new Text(area, SWT.BORDER);
        day.setText(LocalDate.now().toString());
        day.setToolTipText("The day on which it is closed: year-month-day");
        day.addModifyListener(event -> check());
        GridDataFactory.swtDefaults().hint(convertWidthInCharsToPixels(14), SWT.DEFAULT).applyTo(day);
        label(area, "&Record").setToolTipText("What is written into the case, and not changed any more");
        frozen = new Text(area, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.V_SCROLL | SWT.WRAP);
        frozen.setText("Working out the record...");
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH / 2, HEIGHT / 3).applyTo(frozen);
        count = box(area, "&Add the tries to the laboratory's own counts");
        take = box(area, "&Take the units that were used off the shelf");
        if (documents.refusals().isEmpty()) {
            setMessage("What was planned and used becomes a record in the case. Each change can be undone where its "
                    + "document is open.");
            work();
        } else {
            setErrorMessage(String.join(" ", documents.refusals()));
            frozen.setText(String.join("\n", documents.refusals()));
        }
        return area;
    }

    private static Label label(Composite parent, String text) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(text);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(label);
        return label;
    }

    private static Button box(Composite parent, String text) {
        Button box = new Button(parent, SWT.CHECK | SWT.WRAP);
        box.setText(text);
        box.setEnabled(false);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(WIDTH / 2, SWT.DEFAULT).applyTo(box);
        return box;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "&Close case", true).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    /** The plan of before the log is made anew, which takes its time. */
    private void work() {
        Display display = getParentShell().getDisplay();
        LocalDate today = LocalDate.now();
        Optional<ShelfDocument> shelf = live.file().flatMap(live.documents()::shelf)
                .map(EcoreUtil::copy);
        Job job = Job.create("Work out the record of the case", (ICoreRunnable) monitor -> {
            ClosingReview made = ClosingReview.of(planned, today, documents.stored(), shelf);
            display.asyncExec(() -> show(made));
        });
        job.setSystem(true);
        job.schedule();
    }

    private void show(ClosingReview made) {
        if (frozen.isDisposed()) {
            return;
        }
        review = made;
        frozen.setText(ClosingWords.frozen(made, planned));
        CaseDocument file = live.file().orElseThrow();
        offer(count, !made.counts().isEmpty(), ClosingWords.counts(made, file.getTechniques()));
        offer(take, file.getShelf() != null && !made.units().isEmpty(), ClosingWords.units(made, file.getShelf()));
        check();
    }

    private static void offer(Button box, boolean possible, String words) {
        box.setText(words);
        box.setEnabled(possible);
        box.setSelection(possible);
        box.getParent().layout(new Control[] { box });
    }

    private void check() {
        boolean readable = readDay().isPresent();
        Button close = getButton(IDialogConstants.OK_ID);
        if (close != null) {
            close.setEnabled(readable && review != null);
        }
        if (documents.refusals().isEmpty()) {
            setErrorMessage(readable ? null : "The day is read as year-month-day, such as 2026-03-09.");
            if (review != null && !review.missing().isEmpty()) {
                setMessage("Not everything that was used is on the shelf: " + String.join("; ", review.missing())
                        + ". The rest is taken.", IMessageProvider.WARNING);
            }
        }
    }

    private Optional<LocalDate> readDay() {
        try {
            return Optional.of(LocalDate.parse(day.getText().strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    @Override
    protected void okPressed() {
        review.closing().setClosed(readDay().orElseThrow().toString());
        boolean counting = count.getSelection();
        boolean taking = take.getSelection();
        super.okPressed();
        agreed.close(review, counting, taking);
    }
}
