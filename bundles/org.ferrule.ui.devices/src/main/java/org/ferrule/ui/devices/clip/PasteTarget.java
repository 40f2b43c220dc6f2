/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.clip;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EReference;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.ui.devices.sheet.CellPlace;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.devices.sheet.SheetRows;

/**
 * Where rows are pasted to.
 *
 * @param library the library
 * @param list its devices or its lines
 * @param columns all columns
 * @param all all rows of the list
 * @param shownRows the rows that are shown, from the selected one downwards
 * @param shownColumns the columns that are shown, from the selected one to the right
 * @param selected the selected cells
 */
public record PasteTarget(DeviceLibrary library, EReference list, List<SheetColumn> columns, List<SheetRow> all,
        List<SheetRow> shownRows, List<SheetColumn> shownColumns, List<CellPlace> selected) {

    Optional<SheetRow> rowFrom(int offset) {
        return offset < shownRows.size() ? Optional.of(shownRows.get(offset)) : Optional.empty();
    }

    Optional<SheetColumn> columnFrom(int offset) {
        return offset < shownColumns.size() ? Optional.of(shownColumns.get(offset)) : Optional.empty();
    }

    /** A new device can state a figure if it inherits a part that states it, or could. */
    Optional<String> lockedForNew(SheetColumn column, String line) {
        Stream<DeviceLine> lines = library.getLines().stream().filter(each -> line.equals(each.getId()));
        return lines.findFirst().map(found -> column.locked(SheetRows.alone(found)))
                .orElseGet(() -> column.locked(SheetRows.blank(list)));
    }
}
