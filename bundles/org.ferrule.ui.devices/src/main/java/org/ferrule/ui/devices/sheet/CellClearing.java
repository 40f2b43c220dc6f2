/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

import org.ferrule.ui.document.DocumentSession;

/** Empties cells: what the line states holds again. */
public final class CellClearing {

    private final DocumentSession session;

    /** Creates a clearing in a document. */
    public CellClearing(DocumentSession session) {
        this.session = session;
    }

    /**
     * Empties the cells that are selected, as far as they can be.
     *
     * @param selected tells which cells of the rows and columns are meant
     * @return what was left as it is, in words; nothing if all are empty now
     */
    public Optional<String> clear(List<SheetRow> rows, List<SheetColumn> columns,
            BiPredicate<SheetRow, SheetColumn> selected) {
        List<CellChange> changes = new ArrayList<>();
        int left = 0;
        for (SheetColumn column : columns) {
            for (SheetRow row : rows) {
                if (selected.test(row, column) && !column.text(row).isEmpty() && !column.inherited(row)) {
                    if (canBeEmpty(row, column)) {
                        changes.add(new CellChange(row, column, null));
                    } else {
                        left++;
                    }
                }
            }
        }
        new SheetEdits(session).apply(changes);
        return left == 0 ? Optional.empty()
                : Optional.of(left == 1 ? "1 cell cannot be emptied" : left + " cells cannot be emptied");
    }

    private static boolean canBeEmpty(SheetRow row, SheetColumn column) {
        return column.locked(row).isEmpty() && column.attribute().filter(feature -> !feature.isRequired()).isPresent();
    }
}
