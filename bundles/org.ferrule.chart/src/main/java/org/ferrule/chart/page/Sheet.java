/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;

/** All cells of a chart as they are shown, and the words and the style that they share. */
final class Sheet {
    private final ChartContent content;
    private final ReasonWords words;
    private final PageStyle style;
    private final List<List<Optional<CellView>>> cells;

    private Sheet(ChartContent content, ReasonWords words, PageStyle style, List<List<Optional<CellView>>> cells) {
        this.content = content;
        this.words = words;
        this.style = style;
        this.cells = cells;
    }

    Sheet(ChartContent content, ReasonWords words) {
        this(content, words, new PageStyle(content.paper().scale()), cells(content, words));
    }

    /** The same cells, everything set larger. */
    Sheet enlarged(double factor) {
        return new Sheet(content, words, new PageStyle(style.scale() * factor), cells);
    }

    private static List<List<Optional<CellView>>> cells(ChartContent content, ReasonWords words) {
        List<List<Optional<CellView>>> cells = new ArrayList<>();
        AnswerWords answers = new AnswerWords(words);
        for (int row = 0; row < content.rows().size(); row++) {
            List<Optional<CellView>> line = new ArrayList<>();
            for (int column = 0; column < content.columns().size(); column++) {
                PairNames pair = pair(content.rows().get(row), content.columns().get(column));
                line.add(content.answers().at(row, column)
                        .map(answer -> CellView.of(answer, content.number(), words.lengths(),
                                Note.of(answer, pair, words), Printable.line(answers.summary(answer.in())))));
            }
            cells.add(List.copyOf(line));
        }
        return List.copyOf(cells);
    }

    static PairNames pair(Head row, Head column) {
        return new PairNames(row.id(), row.title(), column.id(), column.title());
    }

    ChartContent content() {
        return content;
    }

    PageStyle style() {
        return style;
    }

    Phrases phrases() {
        return words.phrases();
    }

    /** A head's figure with what it is of; empty where it has none. */
    String figure(Head head, String key) {
        return head.figure().isBlank() ? "" : phrases().fill(key, head.figure());
    }

    /** What the cell shows; empty where the pair was not asked. */
    Optional<CellView> cell(int row, int column) {
        return cells.get(row).get(column);
    }

    /** What all cells show. */
    Stream<CellView> allCells() {
        return cells.stream().flatMap(List::stream).flatMap(Optional::stream);
    }
}
