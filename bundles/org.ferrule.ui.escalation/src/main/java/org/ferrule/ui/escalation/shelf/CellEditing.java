/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TextCellEditor;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.document.DocumentSession;

/** Edits one column in place; what cannot be read is refused with a word of why, and the cell stays as it was. */
final class CellEditing extends EditingSupport {

    private final DocumentSession session;
    private final ShelfColumn column;
    private final TextCellEditor editor;
    private final ScanLine messages;

    CellEditing(TableViewer viewer, DocumentSession session, ShelfColumn column, ScanLine messages) {
        super(viewer);
        this.session = session;
        this.column = column;
        this.messages = messages;
        editor = new TextCellEditor(viewer.getTable());
    }

    @Override
    protected boolean canEdit(Object element) {
        return session.editable() && column.owner((LotRow) element) != null;
    }

    @Override
    protected CellEditor getCellEditor(Object element) {
        return editor;
    }

    @Override
    protected Object getValue(Object element) {
        return column.text((LotRow) element);
    }

    @Override
    protected void setValue(Object element, Object value) {
        LotRow row = (LotRow) element;
        String typed = ((String) value).strip();
        if (typed.equals(column.text(row))) {
            return;
        }
        try {
            session.set(column.owner(row), column.feature(), typed.isEmpty() ? null : read(typed));
            messages.clear();
        } catch (NumberFormatException | DateTimeParseException e) {
            messages.refuse(column.title() + ": \u201c" + typed + "\u201d is no "
                    + (column == ShelfColumn.EXPIRY ? "date such as 2027-02-28" : "number of 0 or more"));
        }
    }

    private Object read(String typed) {
        EDataType type = column.feature().getEAttributeType();
        if (column.feature() == Literals.STOCK_LOT__EXPIRY) {
            return LocalDate.parse(typed).toString();
        }
        Object value = EcoreUtil.createFromString(type, typed);
        if (value instanceof Number number && number.doubleValue() < 0) {
            throw new NumberFormatException(typed);
        }
        return value;
    }
}
