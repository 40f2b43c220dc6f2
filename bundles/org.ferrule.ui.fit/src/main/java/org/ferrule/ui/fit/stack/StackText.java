/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.chart.words.AnswerLine;
import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.StackWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.stack.Crossing;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.clip.CopyKey;
import org.ferrule.ui.fit.clip.TextCopy;
import org.ferrule.ui.look.Colours;

/** Why: of the selected device what it has to pass and the reasons, else what is said of the whole stack. */
final class StackText {

    private static final int MARGIN = 6;
    private static final String BULLET = "\u2022 ";
    private static final String SELECT = "Select a line to read why.";

    private final StyledText text;

    /** Creates the part. */
    StackText(Composite parent) {
        text = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.MULTI);
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setAlwaysShowScrollBars(false);
        text.setCaret(null);
        CopyKey.of(text, this::copy);
    }

    /** What is selected, or else all. */
    private void copy() {
        TextCopy.put(text, text.getSelectionCount() > 0 ? text.getSelectionText() : text.getText());
    }

    /** Explains one device, or with -1 the whole. */
    void show(AnsweredStack answered, int selected, Phase phase) {
        ReasonWords reasons = ReasonWords.english(ShownUnits.now());
        List<Line> lines = selected < 0 || answered.crossings(selected).isEmpty() ? whole(answered, reasons, phase)
                : device(answered, selected, reasons, phase);
        StringBuilder content = new StringBuilder();
        List<StyleRange> styles = new ArrayList<>();
        for (Line line : lines) {
            styles.add(new StyleRange(content.length(), line.words().length(),
                    line.muted() ? Colours.muted() : null, null, line.bold() ? SWT.BOLD : SWT.NORMAL));
            content.append(line.words()).append('\n');
        }
        text.setText(content.toString());
        text.setStyleRanges(styles.toArray(StyleRange[]::new));
    }

    private record Line(String words, boolean bold, boolean muted) {
    }

    /** Without the levels, which are listed; their reasons are told when one is chosen. */
    private static List<Line> whole(AnsweredStack answered, ReasonWords reasons, Phase phase) {
        List<Line> lines = new ArrayList<>();
        new StackWords(reasons).summary(answered.answer(), phase)
                .forEach(line -> lines.add(new Line((lines.isEmpty() ? "" : BULLET) + line, lines.isEmpty(), false)));
        lines.add(new Line(SELECT, false, true));
        return lines;
    }

    private static List<Line> device(AnsweredStack answered, int selected, ReasonWords reasons, Phase phase) {
        AnswerWords words = new AnswerWords(reasons);
        List<Line> lines = new ArrayList<>();
        for (Crossing crossing : answered.crossings(selected)) {
            PairNames names = PairNames.of(crossing.question());
            lines.add(new Line(crossing.question().inner().device().name() + " in "
                    + crossing.question().outer().device().name(), true, false));
            words.explain(crossing.answer().in(phase), phase, names, Direction.TIP_FIRST)
                    .forEach(line -> lines.add(new Line(lead(line.kind()) + line.text(), false, isNote(line.kind()))));
        }
        return lines;
    }

    private static String lead(AnswerLine.Kind kind) {
        return switch (kind) {
            case SUMMARY -> "";
            case CONFLICT -> BULLET + "Conflict: ";
            case CAUTION -> BULLET + "Caution: ";
            default -> BULLET;
        };
    }

    private static boolean isNote(AnswerLine.Kind kind) {
        return kind == AnswerLine.Kind.NOTE || kind == AnswerLine.Kind.SOURCE;
    }

    /** Says only why there is no answer. */
    void say(String words) {
        text.setText(words);
    }

    /** Returns what stands there. */
    String words() {
        return text.getText();
    }
}
