/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.clip;

import java.util.Optional;

import org.ferrule.ui.devices.sheet.CellChange;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetRow;

/**
 * What a pasted cell would do.
 *
 * @param row the row that it changes, or null for one that is new
 * @param line the row of the clipboard, from 0
 * @param where what the row is called
 * @param column the column, or null if there is none
 * @param head what the column is called
 * @param before the text that stands there now
 * @param after the text that was pasted
 * @param value the value that was read; null for none
 * @param problem why it cannot be taken over; nothing if it can
 * @param doubt what is implausible about it, if anything
 */
public record PasteCell(SheetRow row, int line, String where, SheetColumn column, String head, String before,
        String after, Object value, Optional<String> problem, Optional<String> doubt) {

    /** Tells whether something would change. */
    public boolean changes() {
        return problem.isEmpty() && (row == null ? value != null : !after.equals(before) || column.inherited(row));
    }

    /** Tells whether it is part of a new entry. */
    public boolean isNew() {
        return row == null;
    }

    CellChange change() {
        return new CellChange(row, column, value);
    }

    PasteCell failing(String reason) {
        return new PasteCell(row, line, where, column, head, before, after, value,
                problem.or(() -> Optional.of(reason)),
                doubt);
    }
}
