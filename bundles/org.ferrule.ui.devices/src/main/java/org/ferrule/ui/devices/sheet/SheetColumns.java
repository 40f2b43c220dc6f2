/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.EReference;
import org.ferrule.model.ModelPackage.Literals;

/** The columns of the table of devices, or of lines. */
public final class SheetColumns {

    private static final int FIGURE_CHARACTERS = 13;

    private SheetColumns() {
    }

    /**
     * Returns all columns in their first order.
     *
     * @param feature the devices or the lines of a library
     */
    public static List<SheetColumn> of(EReference feature, SheetProblems problems) {
        List<SheetColumn> columns = new ArrayList<>(List.of(new AttributeColumn(Literals.DEVICE_PARTS__ID, 20),
                new AttributeColumn(Literals.DEVICE_PARTS__NAME, 30),
                new AttributeColumn(Literals.DEVICE_PARTS__KIND, 18),
                new AttributeColumn(Literals.DEVICE_PARTS__MAKER, 20)));
        if (feature == Literals.DEVICE_LIBRARY__DEVICES) {
            columns.add(new AttributeColumn(Literals.DEVICE__LINE, 16));
        }
        columns.add(new AttributeColumn(Literals.DEVICE_PARTS__SIZE, "Size", 14));
        columns.addAll(FigureColumn.ALL);
        columns.add(new AttributeColumn(Literals.DEVICE_PARTS__EFFECTIVE_LENGTH, FIGURE_CHARACTERS));
        columns.add(new AttributeColumn(Literals.DEVICE_PARTS__TAKES_WIRE, "Wire up to", FIGURE_CHARACTERS));
        columns.add(new AttributeColumn(Literals.DEVICE_PARTS__MODEL, 15));
        columns.add(new AttributeColumn(Literals.SOURCED__SOURCE, 14));
        columns.add(age());
        columns.add(new InfoColumn("problems", "Problems", "How many problems were found", 9, problems::count,
                problems::sortable, "Problems are found, not typed"));
        return List.copyOf(columns);
    }

    private static SheetColumn age() {
        SourceAge age = new SourceAge(LocalDate.now());
        return new InfoColumn("sourceAge", "Source age",
                "How old the source is that the device cites, or else its line", 11, age::words,
                row -> age.date(row).map(date -> SortKey.of(-date.toEpochDay())).orElse(null),
                "The age follows from the date of the source");
    }

    /** Finds a column by its id or its head, whatever the case. */
    public static Optional<SheetColumn> find(List<SheetColumn> columns, String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return columns.stream().filter(column -> wanted.equals(column.id().toLowerCase(Locale.ROOT))
                || wanted.equals(column.title().toLowerCase(Locale.ROOT))).findFirst();
    }
}
