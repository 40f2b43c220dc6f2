/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.ferrule.chart.words.AnswerLine;
import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.ConditionWords;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.ui.look.Colours;

/** The reasons of an answer in words: the sentence that sums it up, what decides, what contradicts, and the sources. */
final class AnswerText {

    private static final int MARGIN = 6;

    private final StyledText text;

    AnswerText(Composite parent) {
        text = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.MULTI);
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setAlwaysShowScrollBars(false);
        text.setCaret(null);
    }

    Control control() {
        return text;
    }

    void show(AskedPair pair, Phase phase) {
        AnswerWords words = new AnswerWords(ReasonWords.english(ShownUnits.now()));
        List<AnswerLine> lines = words.explain(pair.answer().in(phase), phase, pair.names(),
                pair.question().direction());
        List<String> conditions = ConditionWords.of(pair.question().conditions());
        StringBuilder content = new StringBuilder();
        List<StyleRange> styles = new ArrayList<>();
        for (AnswerLine line : lines) {
            append(content, styles, line);
            if (line.kind() == AnswerLine.Kind.SUMMARY && !conditions.isEmpty()) {
                append(content, styles, new AnswerLine(phase, AnswerLine.Kind.NOTE,
                        "Asked: " + String.join("; ", conditions)));
            }
        }
        text.setText(content.toString());
        text.setStyleRanges(styles.toArray(StyleRange[]::new));
    }

    private static void append(StringBuilder content, List<StyleRange> styles, AnswerLine line) {
        int start = content.length();
        content.append(lead(line.kind())).append(line.text());
        styles.add(new StyleRange(start, content.length() - start, color(line.kind()), null));
        if (line.kind() == AnswerLine.Kind.SUMMARY) {
            styles.get(styles.size() - 1).length = Math.max(1, line.text().indexOf(':'));
            styles.get(styles.size() - 1).fontStyle = SWT.BOLD;
        }
        content.append('\n');
    }

    private static String lead(AnswerLine.Kind kind) {
        return switch (kind) {
            case SUMMARY -> "";
            case CONFLICT -> "\u2022 Conflict: ";
            case CAUTION -> "\u2022 Caution: ";
            default -> "\u2022 ";
        };
    }

    private static Color color(AnswerLine.Kind kind) {
        return switch (kind) {
            case NOTE, SOURCE -> Colours.muted();
            case CONFLICT -> Colours.error();
            default -> null;
        };
    }

    /** Says that there is nothing to explain, and why. */
    void say(String why) {
        text.setText(why);
        text.setStyleRange(new StyleRange(0, why.length(), Colours.muted(), null));
    }
}
