/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.clip;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetColumns;

/**
 * What is on the clipboard.
 *
 * @param heads what stands above the columns; empty if the text has no heads
 * @param rows the cells below
 */
public record Pasted(List<String> heads, List<List<String>> rows) {

    /** Reads a text; its first row is taken for heads if most of it are heads of columns. */
    public static Pasted of(String text, List<SheetColumn> columns) {
        List<List<String>> all = TabText.read(text);
        boolean headed = all.size() > 1 && isHeading(all.get(0), columns);
        return new Pasted(headed ? all.get(0) : List.of(), headed ? all.subList(1, all.size()) : all);
    }

    private static boolean isHeading(List<String> row, List<SheetColumn> columns) {
        long stated = row.stream().filter(cell -> !cell.isBlank()).count();
        long known = row.stream().filter(cell -> SheetColumns.find(columns, cell).isPresent()).count();
        return known > 0 && known * 2 >= stated;
    }

    /** Returns whether there is but one cell. */
    public boolean isSingle() {
        return heads.isEmpty() && rows.size() == 1 && rows.get(0).size() == 1;
    }

    /** Returns how many columns the widest row has. */
    int width() {
        return rows.stream().mapToInt(List::size).max().orElse(0);
    }

    /** Returns the place of the ids; nothing without such a head. */
    Optional<Integer> ids(List<SheetColumn> columns) {
        return IntStream.range(0, heads.size()).boxed().filter(i -> SheetColumns.find(columns, heads.get(i))
                .flatMap(SheetColumn::attribute).filter(Literals.DEVICE_PARTS__ID::equals).isPresent()).findFirst();
    }

    String cell(int row, int column) {
        return column < rows.get(row).size() ? rows.get(row).get(column).strip() : "";
    }
}
