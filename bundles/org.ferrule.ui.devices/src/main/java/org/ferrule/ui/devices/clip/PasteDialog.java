/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.clip;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

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
import org.eclipse.swt.widgets.Shell;
import org.ferrule.ui.devices.table.RowColumn;
import org.ferrule.ui.devices.table.RowTable;

/** Shows what pasting would change before anything is changed, and what it could not take over. */
public final class PasteDialog extends TitleAreaDialog {

    private final PasteTarget target;
    private final Pasted pasted;
    private final Map<PasteMode, Button> modes = new EnumMap<>(PasteMode.class);
    private PasteMode mode;
    private List<PasteCell> cells = List.of();
    private RowTable<PasteCell> table;
    private Button leaveOut;

    /** Creates the dialog. */
    public PasteDialog(Shell parent, PasteTarget target, Pasted pasted) {
        super(parent);
        this.target = target;
        this.pasted = pasted;
        mode = PastePlan.usual(target, pasted);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Paste");
    }

    @Override
    protected Point getInitialSize() {
        Point usual = super.getInitialSize();
        return new Point(Math.max(usual.x, 960), Math.max(usual.y, 520));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite body = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(12, 10).spacing(0, 8).applyTo(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        for (PasteMode each : PasteMode.values()) {
            modes.put(each, radio(body, each));
        }
        table = new RowTable<>(body, SWT.SINGLE, columns());
        GridDataFactory.fillDefaults().grab(true, true).hint(880, 220).applyTo(table.control());
        leaveOut = new Button(body, SWT.CHECK);
        leaveOut.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> updateButtons()));
        GridDataFactory.fillDefaults().applyTo(leaveOut);
        setTitle("Paste " + pasted.rows().size() + (pasted.rows().size() == 1 ? " row" : " rows"));
        return area;
    }

    private Button radio(Composite parent, PasteMode each) {
        Button button = new Button(parent, SWT.RADIO);
        button.setText(each.words());
        button.setSelection(each == mode);
        button.setEnabled(PastePlan.isPossible(target, pasted, each));
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (button.getSelection()) {
                mode = each;
                plan();
            }
        }));
        return button;
    }

    private static List<RowColumn<PasteCell>> columns() {
        return List.of(RowColumn.of("Row", 18, PasteCell::where), RowColumn.of("Column", 16, PasteCell::head),
                RowColumn.of("Before", 20, PasteCell::before), RowColumn.of("After", 20, PasteCell::after),
                RowColumn.of("Remark", 44, PasteDialog::remark));
    }

    private static String remark(PasteCell cell) {
        return cell.problem().map(reason -> "Cannot be taken over: " + reason)
                .or(() -> cell.doubt().map(doubt -> "Doubtful: " + doubt)).orElse("");
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Paste", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        plan();
    }

    private void plan() {
        cells = new PastePlan(target, pasted, mode).cells();
        List<PasteCell> rows = new ArrayList<>(cells.stream().filter(cell -> cell.problem().isPresent()).toList());
        rows.addAll(cells.stream().filter(PasteCell::changes).toList());
        table.setRows(rows);
        long problems = problems();
        leaveOut.setText(problems == 1 ? "Leave out the 1 cell that cannot be taken over"
                : "Leave out the " + problems + " cells that cannot be taken over");
        leaveOut.setSelection(false);
        leaveOut.setVisible(problems > 0);
        leaveOut.requestLayout();
        updateButtons();
    }

    private long problems() {
        return cells.stream().filter(cell -> cell.problem().isPresent()).count();
    }

    private long changes() {
        return cells.stream().filter(PasteCell::changes).count();
    }

    private void updateButtons() {
        long same = cells.size() - changes() - problems();
        String counts = changes() + " changes, " + same + " as before";
        if (problems() == 0) {
            setErrorMessage(null);
            setMessage(counts + ". Nothing has been changed yet.");
        } else if (leaveOut.getSelection()) {
            setErrorMessage(null);
            setMessage(counts + ", " + problems() + " left out.");
        } else {
            setErrorMessage(counts + ", " + problems() + " cannot be taken over.");
        }
        getButton(IDialogConstants.OK_ID).setEnabled(changes() > 0 && (problems() == 0 || leaveOut.getSelection()));
    }

    /** Returns what each cell would do. */
    public List<PasteCell> cells() {
        return cells;
    }
}
