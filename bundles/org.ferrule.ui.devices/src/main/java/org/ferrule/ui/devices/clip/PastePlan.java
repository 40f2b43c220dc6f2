/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.clip;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.sheet.CellReading;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetColumns;
import org.ferrule.ui.devices.sheet.SheetRow;

/** What pasting would do, cell by cell, worked out before anything is changed: every cell is accounted for. */
public final class PastePlan {

    private final PasteTarget target;
    private final Pasted pasted;
    private final PasteMode mode;
    private final Map<String, SheetRow> byId = new HashMap<>();

    /** Creates a plan. */
    public PastePlan(PasteTarget target, Pasted pasted, PasteMode mode) {
        this.target = target;
        this.pasted = pasted;
        this.mode = mode;
        target.all().forEach(row -> byId.putIfAbsent(row.parts().getId(), row));
    }

    /** Returns how the text is meant, as far as can be told: by ids if it has any. */
    public static PasteMode usual(PasteTarget target, Pasted pasted) {
        return pasted.ids(target.columns()).isPresent() ? PasteMode.BY_ID : PasteMode.OVER;
    }

    /** Tells whether rows can be pasted like that. */
    public static boolean isPossible(PasteTarget target, Pasted pasted, PasteMode mode) {
        return !mode.needsIds() || pasted.ids(target.columns()).isPresent();
    }

    /** Returns what each cell would do. */
    public List<PasteCell> cells() {
        List<PasteCell> cells = new ArrayList<>();
        if (mode == PasteMode.OVER && pasted.isSingle()) {
            target.selected().forEach(place -> cells.add(cell(place.row(), 0, Optional.of(place.column()),
                    place.column().title(), pasted.cell(0, 0))));
        } else {
            for (int line = 0; line < pasted.rows().size(); line++) {
                line(line, cells);
            }
        }
        return withoutDoubleIds(cells);
    }

    private void line(int line, List<PasteCell> cells) {
        Optional<SheetRow> row = row(line);
        int width = Math.max(pasted.width(), pasted.heads().size());
        for (int i = 0; i < width; i++) {
            String head = pasted.heads().isEmpty() ? "" : i < pasted.heads().size() ? pasted.heads().get(i) : "";
            Optional<SheetColumn> column = pasted.heads().isEmpty() ? target.columnFrom(i)
                    : SheetColumns.find(target.columns(), head);
            String text = pasted.cell(line, i);
            if (column.isPresent() || !text.isEmpty()) {
                String title = column.map(SheetColumn::title).orElse(head.isEmpty() ? "column " + (i + 1) : head);
                cells.add(mode == PasteMode.OVER && row.isEmpty() ? below(line, column, title, text)
                        : cell(row.orElse(null), line, column, title, text));
            }
        }
    }

    private Optional<SheetRow> row(int line) {
        return switch (mode) {
            case OVER -> target.rowFrom(line);
            case BY_ID -> Optional.ofNullable(byId.get(id(line)));
            case NEW -> Optional.empty();
        };
    }

    private String id(int line) {
        return pasted.ids(target.columns()).map(place -> pasted.cell(line, place)).orElse("");
    }

    private static PasteCell below(int line, Optional<SheetColumn> column, String title, String text) {
        return new PasteCell(null, line, "row " + (line + 1), column.orElse(null), title, "", text, null,
                Optional.of("There is no row left below: paste it as a new entry, with heads"), Optional.empty());
    }

    private PasteCell cell(SheetRow row, int line, Optional<SheetColumn> column, String title, String text) {
        String where = row == null ? "new: " + id(line) : String.valueOf(row.parts().getId());
        if (column.isEmpty()) {
            return problem(row, line, where, null, title, text, "There is no such column");
        }
        String before = row == null ? "" : column.get().text(row);
        if (before.equals(text) && (row == null || text.isEmpty() || !column.get().inherited(row)
                || column.get().attribute().isEmpty())) {
            return new PasteCell(row, line, where, column.get(), title, before, text, null, Optional.empty(),
                    Optional.empty());
        }
        Optional<String> locked = row == null ? target.lockedForNew(column.get(), lineOf(line))
                : column.get().locked(row);
        if (locked.isPresent()) {
            return problem(row, line, where, column.get(), title, text, locked.get());
        }
        CellReading reading = CellReading.of(column.get().attribute().orElseThrow(), text);
        return new PasteCell(row, line, where, column.get(), title, before, text, reading.value(), reading.error(),
                reading.doubt());
    }

    private String lineOf(int line) {
        for (int i = 0; i < pasted.heads().size(); i++) {
            if (SheetColumns.find(target.columns(), pasted.heads().get(i)).flatMap(SheetColumn::attribute)
                    .filter(Literals.DEVICE__LINE::equals).isPresent()) {
                return pasted.cell(line, i);
            }
        }
        return "";
    }

    private static PasteCell problem(SheetRow row, int line, String where, SheetColumn column, String title,
            String text, String reason) {
        String before = row == null || column == null ? "" : column.text(row);
        return new PasteCell(row, line, where, column, title, before, text, null, Optional.of(reason),
                Optional.empty());
    }

    /** Ids stay unique: those that are pasted, and those that stay. */
    private List<PasteCell> withoutDoubleIds(List<PasteCell> cells) {
        Map<SheetRow, String> now = new LinkedHashMap<>();
        target.all().forEach(row -> now.put(row, row.parts().getId()));
        cells.stream().filter(cell -> isId(cell) && !cell.isNew()).forEach(cell -> now.remove(cell.row()));
        Set<String> taken = new HashSet<>(now.values());
        List<PasteCell> checked = cells.stream()
                .map(cell -> isId(cell) && cell.problem().isEmpty() ? checked(cell, taken) : cell).toList();
        Set<Integer> nameless = checked.stream()
                .filter(cell -> isId(cell) && cell.isNew() && cell.problem().isPresent())
                .map(PasteCell::line).collect(Collectors.toSet());
        return checked.stream().map(cell -> cell.isNew() && cell.problem().isEmpty() && nameless.contains(cell.line())
                && !cell.after().isEmpty() ? cell.failing("Its row has no id that could be taken over") : cell)
                .toList();
    }

    private static PasteCell checked(PasteCell cell, Set<String> taken) {
        if (cell.after().isEmpty()) {
            return cell.failing("A new entry needs an id");
        }
        return taken.add(cell.after()) ? cell : cell.failing("This id is taken already");
    }

    private static boolean isId(PasteCell cell) {
        return cell.column() != null && cell.column().attribute().filter(Literals.DEVICE_PARTS__ID::equals).isPresent();
    }
}
