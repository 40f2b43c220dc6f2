/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.sums;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.calc.result.CalculationText;
import org.ferrule.chart.drawing.EvidenceDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.picture.Caption;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.follow.TurningSash;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;

/** The answer of a calculator: the value first, then what it rests on, and a picture where there is one. */
public final class SumAnswer {

    private static final int MARGIN = 6;
    /** A section across is as high as wide: it soon finds more room beside the words than below them. */
    private static final double BESIDE_ABOVE = 1.5;

    private final SashForm parts;
    private final StyledText text;
    private final PictureCanvas picture;

    SumAnswer(Composite parent) {
        parts = TurningSash.in(parent, BESIDE_ABOVE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(parts);
        text = new StyledText(parts, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.MULTI);
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setAlwaysShowScrollBars(false);
        picture = new PictureCanvas(parts);
        picture.ownedBy(this::owner);
        ThemeChange.follow(text, this::colour);
    }

    /** In the dark the ground of a sash is not that of the views. */
    private void colour() {
        text.setBackground(Colours.dark() ? Colours.paper() : text.getParent().getBackground());
        text.setForeground(Colours.text());
    }

    /** The picture leaves the program with the value, and what it rests on. */
    private PictureOwner owner() {
        String[] lines = text.getText().split("\n", 2);
        return PictureOwner.of(Caption.of(lines[0], lines.length > 1 ? lines[1].strip() : ""));
    }

    /** Shows the answer. */
    void show(Sum sum) {
        List<String> lines = sum.answer().map(CalculationText::write)
                .orElseGet(() -> List.of(sum.problem().orElseThrow().getMessage()));
        say(lines);
        Optional<Evidence> shown = SumPicture.of(sum);
        shown.ifPresent(evidence -> {
            EvidenceDrawing drawing = new EvidenceDrawing(ReasonWords.english(ShownUnits.now()));
            picture.draw((width, height) -> drawing.of(evidence, width, height));
        });
        parts.setMaximizedControl(shown.isPresent() ? null : text);
    }

    /** Shows no answer, and says why. */
    void clear(String why) {
        text.setText(why);
        text.setStyleRange(new StyleRange(0, why.length(), Colours.muted(), null));
        picture.clear("");
        parts.setMaximizedControl(text);
    }

    private void say(List<String> lines) {
        text.setText(String.join("\n", lines));
        List<StyleRange> styles = new ArrayList<>();
        int start = 0;
        boolean basis = false;
        for (String line : lines) {
            basis |= line.isEmpty();
            StyleRange style = new StyleRange(start, line.length(), basis ? Colours.muted() : null, null);
            style.fontStyle = start == 0 ? SWT.BOLD : SWT.NORMAL;
            styles.add(style);
            start += line.length() + 1;
        }
        styles.removeIf(style -> style.length == 0);
        text.setStyleRanges(styles.toArray(StyleRange[]::new));
    }

    /** Returns the words that are shown. */
    public String words() {
        return text.getText();
    }

    /** Returns the canvas of the picture. */
    public PictureCanvas picture() {
        return picture;
    }
}
