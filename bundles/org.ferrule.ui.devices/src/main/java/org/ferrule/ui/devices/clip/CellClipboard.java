/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.window.Window;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.emf.ecore.EReference;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.ui.devices.grid.GridSelection;
import org.ferrule.ui.devices.grid.SheetGrid;
import org.ferrule.ui.devices.sheet.CellPlace;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetLine;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.document.DocumentSession;

/** Copies cells of a table to the clipboard, and pastes what a spreadsheet has put there. */
public final class CellClipboard {

    private final SheetGrid grid;
    private final DocumentSession session;
    private final EReference list;

    /**
     * Creates a clipboard for a table.
     *
     * @param list the devices or the lines of a library
     */
    public CellClipboard(SheetGrid grid, DocumentSession session, EReference list) {
        this.grid = grid;
        this.session = session;
        this.list = list;
    }

    /** Copies the selected cells; several with the heads of their columns. */
    public void copy() {
        String text = text();
        if (!text.isEmpty()) {
            Clipboard clipboard = new Clipboard(grid.control().getDisplay());
            clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
            clipboard.dispose();
        }
    }

    private String text() {
        GridSelection selection = grid.selection();
        List<SheetRow> rows = selection.rows();
        List<SheetColumn> columns = selection.columns();
        List<List<String>> cells = new ArrayList<>();
        if (rows.size() > 1 || columns.size() > 1) {
            cells.add(columns.stream().map(SheetColumn::title).toList());
        }
        for (SheetRow row : rows) {
            cells.add(columns.stream().map(column -> selection.has(row, column) ? column.text(row) : "").toList());
        }
        return rows.isEmpty() ? "" : TabText.write(cells);
    }

    /** Shows what pasting would do, and does it if the user agrees. */
    public void paste() {
        Optional<Pasted> pasted = read();
        if (pasted.isPresent() && session.editable()) {
            PasteTarget target = target();
            PasteDialog dialog = new PasteDialog(grid.control().getShell(), target, pasted.get());
            if (dialog.open() == Window.OK) {
                new PasteCommand(session, target).run(dialog.cells());
            }
        }
    }

    private Optional<Pasted> read() {
        Clipboard clipboard = new Clipboard(grid.control().getDisplay());
        Object content = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        return content instanceof String text && !text.isBlank() ? Optional.of(Pasted.of(text, grid.columns()))
                : Optional.empty();
    }

    private PasteTarget target() {
        GridSelection selection = grid.selection();
        List<SheetRow> rows = grid.listing().lines().stream().flatMap(line -> line.row().stream()).toList();
        List<SheetColumn> columns = selection.shownColumns();
        SheetRow first = selection.rows().stream().findFirst().or(() -> selection.line().flatMap(SheetLine::row))
                .orElse(null);
        int left = selection.columns().stream().findFirst().map(columns::indexOf).orElse(0);
        return new PasteTarget((DeviceLibrary) session.document().orElseThrow(), list, grid.columns(),
                grid.listing().all(), first == null ? List.of() : rows.subList(rows.indexOf(first), rows.size()),
                columns.subList(Math.max(0, left), columns.size()), selected(selection));
    }

    private static List<CellPlace> selected(GridSelection selection) {
        return selection.rows().stream().flatMap(row -> selection.columns().stream()
                .filter(column -> selection.has(row, column)).map(column -> new CellPlace(row, column))).toList();
    }
}
