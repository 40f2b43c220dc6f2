/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The footnotes of one page, numbered from 1 in the order in which its cells ask for them. */
final class PageNotes {
    private final Map<Note, Integer> numbers = new LinkedHashMap<>();

    /** Numbers the footnotes of a cell that are not numbered yet. */
    void add(CellView cell) {
        cell.notes().forEach(note -> numbers.putIfAbsent(note, numbers.size() + 1));
    }

    /** The numbers of a cell's footnotes of one kind. */
    List<Integer> numbers(CellView cell, Note.Kind kind) {
        return cell.notes().stream().filter(note -> note.kind() == kind).map(numbers::get).sorted().toList();
    }

    List<Note> notes() {
        return List.copyOf(numbers.keySet());
    }
}
