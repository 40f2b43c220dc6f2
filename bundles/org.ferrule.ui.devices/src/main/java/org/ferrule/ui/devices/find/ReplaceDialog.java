/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.find;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
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
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.DeviceParts;

/** Finds a text in the fields of devices, shows what replacing would make of each, and leaves out what is not ticked. */
public final class ReplaceDialog extends TitleAreaDialog {

    private static final int GO_TO_ID = IDialogConstants.CLIENT_ID + 1;

    private final List<DeviceParts> all;
    private final List<DeviceParts> selected;
    private final boolean editable;
    private Text find;
    private Text replacement;
    private Button matchCase;
    private Button wholeField;
    private Button pattern;
    private Button onlySelected;
    private HitTable table;
    private List<Hit> chosen = List.of();
    private Optional<Hit> goal = Optional.empty();

    /**
     * Creates the dialog.
     *
     * @param all all devices or lines
     * @param selected those that are selected
     * @param editable whether anything may be replaced
     */
    public ReplaceDialog(Shell parent, List<DeviceParts> all, List<DeviceParts> selected, boolean editable) {
        super(parent);
        this.all = all;
        this.selected = selected;
        this.editable = editable;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Find and replace");
    }

    @Override
    protected Point getInitialSize() {
        Point usual = super.getInitialSize();
        return new Point(Math.max(usual.x, 980), Math.max(usual.y, 600));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite body = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(12, 10).spacing(10, 8).applyTo(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        find = text(body, "Find");
        replacement = text(body, "Replace with");
        Composite options = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(16, 0).applyTo(options);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(options);
        matchCase = option(options, "Match case");
        wholeField = option(options, "Whole fields");
        pattern = option(options, "Regular expression");
        onlySelected = option(options, "Only the " + selected.size() + " selected");
        onlySelected.setSelection(selected.size() > 1);
        table = new HitTable(body, this::count);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(880, 260).applyTo(table.control());
        Composite ticks = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(ticks);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(ticks);
        push(ticks, "Tick all", () -> table.tickAll(true));
        push(ticks, "Tick none", () -> table.tickAll(false));
        setTitle("Find and replace in the fields of devices");
        return area;
    }

    private Text text(Composite parent, String title) {
        new Label(parent, SWT.NONE).setText(title);
        Text text = new Text(parent, SWT.SINGLE | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.addModifyListener(event -> search());
        return text;
    }

    private Button option(Composite parent, String title) {
        Button button = new Button(parent, SWT.CHECK);
        button.setText(title);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> search()));
        return button;
    }

    private static void push(Composite parent, String title, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(title);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, GO_TO_ID, "Go to", false);
        createButton(parent, IDialogConstants.OK_ID, "Replace", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        search();
    }

    private void search() {
        try {
            setErrorMessage(null);
            table.show(HitFinder.find(new Search(find.getText(), replacement.getText(), matchCase.getSelection(),
                    wholeField.getSelection(), pattern.getSelection()), onlySelected.getSelection() ? selected : all));
        } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
            table.show(List.of());
            setErrorMessage(
                    "The expression cannot be read: " + String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
        }
    }

    private void count() {
        int ticked = table.ticked().size();
        if (!find.getText().isEmpty()) {
            setMessage("Found in " + table.hits().size() + (table.hits().size() == 1 ? " field" : " fields") + ", "
                    + ticked + " ticked. Nothing has been changed yet.");
        } else {
            setMessage("Type what to find. Values that a device inherits are found at its line.");
        }
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(editable && ticked > 0);
            getButton(GO_TO_ID).setEnabled(!table.hits().isEmpty());
        }
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == GO_TO_ID) {
            goal = table.selected().or(() -> table.hits().stream().findFirst());
            setReturnCode(CANCEL);
            close();
        } else {
            super.buttonPressed(id);
        }
    }

    @Override
    protected void okPressed() {
        chosen = table.ticked();
        super.okPressed();
    }

    /** Returns the hits that are to be replaced. */
    public List<Hit> chosen() {
        return chosen;
    }

    /** Returns what the user wants to see instead of replacing, if anything. */
    public Optional<EObject> goal() {
        return goal.map(Hit::object);
    }
}
