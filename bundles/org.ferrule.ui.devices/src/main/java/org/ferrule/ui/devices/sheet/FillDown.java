/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.document.DocumentSession;

/** Copies the uppermost selected cell of each column into the selected cells below it. */
public final class FillDown {

    private final DocumentSession session;
    private final List<CellChange> changes = new ArrayList<>();
    private int left;

    /** Creates a copying within a document. */
    public FillDown(DocumentSession session) {
        this.session = session;
    }

    /**
     * Copies downwards, by one command.
     *
     * @param rows the rows in the order in which they are shown
     * @param selected tells which cells of the rows and columns are meant
     * @return what was left as it is, in words; nothing if all cells were filled
     */
    public Optional<String> run(List<SheetRow> rows, List<SheetColumn> columns,
            BiPredicate<SheetRow, SheetColumn> selected) {
        columns.forEach(column -> fill(column, rows.stream().filter(row -> selected.test(row, column)).toList()));
        new SheetEdits(session).apply(changes);
        return left == 0 ? Optional.empty()
                : Optional.of((left == 1 ? "1 cell was" : left + " cells were")
                        + " left as is: ids differ, and what follows from something else cannot be filled");
    }

    private void fill(SheetColumn column, List<SheetRow> rows) {
        if (rows.size() < 2) {
            return;
        }
        Optional<CellReading> reading = column.attribute().filter(feature -> feature != Literals.DEVICE_PARTS__ID)
                .map(feature -> CellReading.of(feature, column.text(rows.get(0)))).filter(CellReading::readable);
        for (SheetRow row : rows.subList(1, rows.size())) {
            if (reading.isEmpty() || column.locked(row).isPresent()) {
                left++;
            } else {
                changes.add(new CellChange(row, column, reading.get().value()));
            }
        }
    }
}
