/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.StackWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.stack.LevelAnswer;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.answer.VerdictImages;
import org.ferrule.ui.fit.clip.CopyTable;

/** The levels of a stack, a line each: the verdict with its mark, what is left at worst, what lies in what. */
final class StackLevels {

    private static final List<String> HEADS = List.of("Verdict", "Left at worst", "What lies in what");

    private final CopyTable lines;
    private final VerdictImages images;
    private List<Line> shown = List.of();

    private record Line(Optional<VerdictLook> look, String verdict, String left, String what) {

        List<String> texts() {
            return List.of(verdict, left, what);
        }
    }

    /**
     * Creates an empty list.
     *
     * @param chosen is told the number of a level that the user chooses
     */
    StackLevels(Composite parent, IntConsumer chosen) {
        lines = new CopyTable(parent, SWT.SINGLE);
        images = new VerdictImages(table());
        table().addSelectionListener(
                SelectionListener.widgetSelectedAdapter(event -> chosen.accept(table().getSelectionIndex())));
    }

    private Table table() {
        return lines.control();
    }

    /** Shows the levels from the outside to the inside, one of them chosen; -1 for none. */
    void show(AnsweredStack answered, Phase phase, int chosen) {
        ReasonWords words = ReasonWords.english(ShownUnits.first());
        show(answered.answer().levels().stream().map(level -> line(level, phase, words)).toList());
        if (table().getSelectionIndex() != chosen) {
            table().deselectAll();
            if (chosen >= 0) {
                table().setSelection(chosen);
            }
        }
    }

    private void show(List<Line> next) {
        if (next.equals(shown)) {
            return;
        }
        shown = next;
        lines.show(next.isEmpty() ? List.of() : HEADS, next.stream().map(Line::texts).toList());
        IntStream.range(0, next.size())
                .forEach(i -> table().getItem(i).setImage(0, next.get(i).look().map(this::image).orElse(null)));
        lines.fit();
    }

    private Image image(VerdictLook look) {
        return images.of(look);
    }

    private static Line line(LevelAnswer level, Phase phase, ReasonWords words) {
        return level.deciding(phase).map(crossing -> {
            PhaseAnswer answer = crossing.answer().in(phase);
            return new Line(Optional.of(VerdictLook.of(answer)), answer.verdict().word(),
                    answer.clearance().map(c -> words.lengths().clearance(c.worst())).orElse("not known"),
                    new StackWords(words).pair(crossing.question()));
        }).orElseGet(() -> new Line(Optional.empty(), "", "",
                StackWords.name(level.level().device().device().device()) + ", nothing is asked of it"));
    }

    /** Shows none. */
    void clear() {
        show(List.of());
    }

    /** Returns what stands in the lines. */
    List<List<String>> texts() {
        return lines.texts();
    }
}
