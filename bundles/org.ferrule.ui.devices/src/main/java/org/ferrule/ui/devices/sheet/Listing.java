/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.ferrule.model.DeviceParts;

/**
 * The lines of the table: the rows that were chosen, sorted, and under the heads of their groups. While somebody edits,
 * rows stay where they are, although they may belong elsewhere now; they are listed anew when rows come or go, or when
 * the user chooses, sorts or groups.
 */
public final class Listing {

    private final Choice choice;
    private final Set<String> folded = new HashSet<>();
    private List<SheetRow> all = List.of();
    private List<SheetLine> lines = List.of();
    private Map<DeviceParts, Integer> places = Map.of();
    private SheetColumn sorted;
    private boolean rising;
    private Trait grouping;
    private int shown;

    /** Creates a list without rows. */
    public Listing(Choice choice) {
        this.choice = choice;
    }

    /** Returns what decides which rows are shown. */
    public Choice choice() {
        return choice;
    }

    /** Takes over other rows; tells whether lines have moved. */
    public boolean update(List<SheetRow> rows) {
        Map<DeviceParts, SheetRow> byParts = new IdentityHashMap<>();
        rows.forEach(row -> byParts.put(row.parts(), row));
        boolean same = rows.size() == all.size() && all.stream().allMatch(row -> byParts.containsKey(row.parts()));
        all = rows;
        if (same) {
            lines = lines.stream()
                    .map(line -> line.row().<SheetLine>map(row -> new SheetLine.Of(byParts.get(row.parts())))
                            .orElse(line))
                    .toList();
        } else {
            relist();
        }
        return !same;
    }

    /** Lists the rows anew. */
    public void relist() {
        List<SheetRow> chosen = new ArrayList<>(all);
        chosen.removeIf(row -> !choice.passes(row));
        if (sorted != null) {
            chosen.sort(sorted.order(rising));
        }
        shown = chosen.size();
        lines = grouping == null ? chosen.stream().<SheetLine>map(SheetLine.Of::new).toList() : grouped(chosen);
        places = new IdentityHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            int place = i;
            lines.get(i).row().ifPresent(row -> places.put(row.parts(), place));
        }
    }

    private List<SheetLine> grouped(List<SheetRow> rows) {
        Map<String, List<SheetRow>> groups = rows.stream()
                .collect(Collectors.groupingBy(grouping::of, TreeMap::new, Collectors.toList()));
        List<SheetLine> found = new ArrayList<>();
        groups.forEach((value, members) -> {
            boolean closed = folded.contains(value);
            found.add(new SheetLine.Head(value, members.size(), closed));
            if (!closed) {
                members.forEach(row -> found.add(new SheetLine.Of(row)));
            }
        });
        return found;
    }

    /** Sorts by a column: rising, falling, and as in the document again. */
    public void sortBy(SheetColumn column) {
        if (sorted != column) {
            sorted = column;
            rising = true;
        } else if (rising) {
            rising = false;
        } else {
            sorted = null;
        }
        relist();
    }

    /** Returns the column that the rows are sorted by. */
    public Optional<SheetColumn> sorted() {
        return Optional.ofNullable(sorted);
    }

    /** Tells whether the order is rising. */
    public boolean rising() {
        return rising;
    }

    /** Puts rows together that have a trait in common; null for not. */
    public void groupBy(Trait trait) {
        grouping = trait;
        folded.clear();
        relist();
    }

    /** Returns what rows are put together by. */
    public Optional<Trait> grouping() {
        return Optional.ofNullable(grouping);
    }

    /** Folds a group, or unfolds it. */
    public void toggle(SheetLine.Head head) {
        if (!folded.remove(head.value())) {
            folded.add(head.value());
        }
        relist();
    }

    /** Folds or unfolds all groups. */
    public void foldAll(boolean fold) {
        folded.clear();
        if (fold && grouping != null) {
            all.forEach(row -> folded.add(grouping.of(row)));
        }
        relist();
    }

    /** Unfolds the group of a row. */
    void unfold(SheetRow row) {
        if (grouping != null && folded.remove(grouping.of(row))) {
            relist();
        }
    }

    /** Returns the lines. */
    public List<SheetLine> lines() {
        return lines;
    }

    /** Returns all rows, in the order of the document. */
    public List<SheetRow> all() {
        return all;
    }

    /** Returns how many rows were chosen, those in folded groups too. */
    public int shown() {
        return shown;
    }

    /** Returns the place of a device among the lines; its group is unfolded if need be. Nothing if it is not chosen. */
    public Optional<Integer> find(DeviceParts parts) {
        all.stream().filter(row -> row.parts() == parts).findFirst().ifPresent(this::unfold);
        return place(parts);
    }

    /** Returns the place of a device among the lines; nothing if it is not chosen, or in a folded group. */
    public Optional<Integer> place(DeviceParts parts) {
        return Optional.ofNullable(places.get(parts));
    }

    /** Returns the values of a trait among all rows, with the number of rows. */
    public Map<String, Long> values(Trait trait) {
        return all.stream().map(trait::of)
                .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
    }
}
