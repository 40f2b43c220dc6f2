/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.passage.FitAnswer;

/** All cells of a chart as they are shown, and the words and the style that they share. */
final class Sheet {
    private final ChartContent content;
    private final ReasonWords words;
    private final PageStyle style;
    private final List<List<Optional<CellView>>> cells;
    private final Set<SourceRef> sources;

    private Sheet(Sheet other, PageStyle style) {
        this.content = other.content;
        this.words = other.words;
        this.style = style;
        this.cells = other.cells;
        this.sources = other.sources;
    }

    Sheet(ChartContent content, ReasonWords words) {
        this.content = content;
        this.words = words;
        this.style = new PageStyle(content.paper().scale());
        this.cells = new ArrayList<>();
        this.sources = new LinkedHashSet<>();
        for (int row = 0; row < content.rows().size(); row++) {
            cells.add(line(row));
        }
    }

    /** The same cells, everything set larger. */
    Sheet enlarged(double factor) {
        return new Sheet(this, new PageStyle(style.scale() * factor));
    }

    private List<Optional<CellView>> line(int row) {
        List<Optional<CellView>> line = new ArrayList<>();
        for (int column = 0; column < content.columns().size(); column++) {
            PairNames pair = content.names(row, column);
            line.add(content.answers().at(row, column).map(answer -> view(answer, pair)));
        }
        return List.copyOf(line);
    }

    /** An answer is worked out when it is asked for: all that is needed of it is taken at once. */
    private CellView view(FitAnswer answer, PairNames pair) {
        sources.addAll(AnswerWords.sources(answer.in()));
        sources.addAll(AnswerWords.sources(answer.out()));
        return CellView.of(FitCell.of(answer), content.number(), words.lengths(), Note.of(answer, pair, words),
                Printable.line(new AnswerWords(words).summary(answer.in())));
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

    /** The sources that the answers of all cells rest on, each once. */
    Set<SourceRef> sources() {
        return Collections.unmodifiableSet(sources);
    }

    /** What all cells show. */
    Stream<CellView> allCells() {
        return cells.stream().flatMap(List::stream).flatMap(Optional::stream);
    }
}
