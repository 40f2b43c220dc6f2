/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.next;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.Device;
import org.ferrule.ui.devices.sheet.CellReading;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.Colours;

/** Shows what the next size of a line would state, and lets it be put right, before anything is added. */
public final class NextSizeDialog extends TitleAreaDialog {

    private final NextSize next;
    private final DocumentSession session;
    private final List<SizeStep> steps;
    private final Map<SizeField, Text> texts = new LinkedHashMap<>();
    private final Map<SizeField, Label> reasons = new HashMap<>();
    private final List<Keepsake> keepsakes;
    private Table kept;
    private Device added;

    /** Creates the dialog for a size. */
    public NextSizeDialog(Shell parent, DocumentSession session, NextSize next) {
        super(parent);
        this.session = session;
        this.next = next;
        steps = next.steps();
        keepsakes = Keepsake.of(next.device(), next.fields());
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Next size");
    }

    @Override
    protected Point getInitialSize() {
        Point usual = super.getInitialSize();
        return new Point(Math.max(usual.x, 780), Math.max(usual.y, 560));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite body = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).margins(12, 10).spacing(12, 6).applyTo(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        createSteps(body);
        for (String head : List.of("", "Now", "Next size", "")) {
            label(body, head, true);
        }
        next.fields().forEach(field -> createField(body, field));
        if (!keepsakes.isEmpty()) {
            createKept(body);
        }
        setTitle("The next size after "
                + Optional.ofNullable(next.device().getName()).orElse(next.device().getId()));
        steps.stream().findFirst().ifPresentOrElse(this::propose, this::proposeNothing);
        return area;
    }

    private void createSteps(Composite parent) {
        for (SizeStep step : steps) {
            Button button = new Button(parent, SWT.RADIO);
            button.setText(step.size() + "   (" + step.reason() + ")");
            button.setSelection(step == steps.get(0));
            GridDataFactory.fillDefaults().span(4, 1).applyTo(button);
            button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
                if (button.getSelection()) {
                    propose(step);
                }
            }));
        }
    }

    private static Label label(Composite parent, String text, boolean muted) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(text.replace("&", "&&"));
        label.setForeground(muted ? Colours.muted() : null);
        return label;
    }

    private void createField(Composite parent, SizeField field) {
        label(parent, field.title(), false);
        label(parent, Optional.ofNullable(field.text(next.device())).orElse(""), true);
        Text text = new Text(parent, SWT.SINGLE | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(180, SWT.DEFAULT).applyTo(text);
        text.addModifyListener(event -> check());
        texts.put(field, text);
        Label reason = label(parent, "", true);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(230, SWT.DEFAULT).applyTo(reason);
        reasons.put(field, reason);
    }

    private void createKept(Composite parent) {
        Label head = new Label(parent, SWT.WRAP);
        head.setText("Tick what the new size shares with the former one. What is not ticked is left out, and so unknown"
                + " until you state it from the label.");
        GridDataFactory.fillDefaults().span(4, 1).hint(560, SWT.DEFAULT).grab(true, false).indent(0, 8).applyTo(head);
        kept = new Table(parent, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().span(4, 1).grab(true, true).hint(560, 120).applyTo(kept);
        new TableColumn(kept, SWT.NONE).setWidth(360);
        new TableColumn(kept, SWT.NONE).setWidth(240);
        for (Keepsake keepsake : keepsakes) {
            TableItem item = new TableItem(kept, SWT.NONE);
            item.setText(new String[] { keepsake.where(), keepsake.text() });
            item.setChecked(keepsake.usuallyHolds());
        }
    }

    private void propose(SizeStep step) {
        texts.forEach((field, text) -> {
            Optional<String> proposal = field.proposal(next.device(), step);
            text.setText(proposal.orElse(""));
            boolean same = proposal.filter(found -> found.equals(field.text(next.device()))).isPresent();
            reasons.get(field).setText(proposal.isEmpty() ? "No step is evident: type it"
                    : same ? "The same in these sizes" : "Counted up");
        });
        check();
    }

    private void proposeNothing() {
        reasons.values().forEach(reason -> reason.setText("No step is evident: type it"));
        check();
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Add", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        check();
    }

    private void check() {
        Optional<SizeField> wrong = texts.keySet().stream().filter(field -> problem(field).isPresent()).findFirst();
        Optional<String> problem = wrong.flatMap(this::problem);
        boolean missing = wrong.filter(field -> texts.get(field).getText().isBlank()).isPresent();
        setErrorMessage(missing ? null : problem.orElse(null));
        setMessage(missing ? wrong.get().title() + ": type it as it is to be for the new size."
                : "Nothing has been added yet. Compare every figure with the label of the new size.");
        if (getButton(IDialogConstants.OK_ID) != null) {
            getButton(IDialogConstants.OK_ID).setEnabled(problem.isEmpty());
        }
    }

    private Optional<String> problem(SizeField field) {
        String text = texts.get(field).getText();
        if (field == SizeField.ID && next.isTaken(text.strip())) {
            return Optional.of("Id: this id is taken already");
        }
        return CellReading.of(field.feature(), text).error().map(error -> field.title() + ": " + error);
    }

    @Override
    protected void okPressed() {
        Map<SizeField, String> stated = new LinkedHashMap<>();
        texts.forEach((field, text) -> stated.put(field, text.getText()));
        Set<Keepsake> dropped = new HashSet<>();
        for (int i = 0; i < keepsakes.size(); i++) {
            if (!kept.getItem(i).getChecked()) {
                dropped.add(keepsakes.get(i));
            }
        }
        added = next.add(session, stated, dropped);
        super.okPressed();
    }

    /** Returns the size that was added, if it was. */
    public Optional<Device> added() {
        return Optional.ofNullable(added);
    }
}
