/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.card;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.ferrule.chart.drawing.CrossSectionDrawing;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.AnswerLine;
import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.LengthWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.answer.VerdictImages;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.picture.PictureCanvas;

/** Both devices, the verdicts with their clearances, the place that decides, the reason, and the section across there. */
final class CardContent {

    private static final int WIDTH = 320;
    private static final int PICTURE_WIDTH = 230;
    private static final int PICTURE_HEIGHT = 160;
    private static final int MOST_REASONS = 2;

    private final ReasonWords reasons = ReasonWords.english(ShownUnits.now());
    private final AnswerWords words = new AnswerWords(reasons);
    private final LengthWords lengths = new LengthWords(ShownUnits.first());
    private final Composite control;
    private final AskedPair pair;
    private final VerdictImages images;
    private final StringBuilder text = new StringBuilder();

    CardContent(Composite parent, AskedPair pair) {
        this.pair = pair;
        control = new Composite(parent, SWT.NONE);
        control.setBackgroundMode(SWT.INHERIT_FORCE);
        control.setBackground(Colours.paper());
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 6).spacing(8, 3).applyTo(control);
        images = new VerdictImages(control);
        Composite left = new Composite(control, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 3).applyTo(left);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(left);
        PairNames names = pair.names();
        bold(line(left, names.innerName() + "  in  " + names.outerName(), foreground()));
        phase(left, Phase.IN, "Going in");
        phase(left, Phase.OUT, "Coming out");
        explain(left);
        if (pair.question().conditions().alone()) {
            picture();
        }
    }

    private Color foreground() {
        return Colours.text();
    }

    private static void bold(Label label) {
        label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
    }

    private Label line(Composite parent, String words, Color color) {
        Label label = new Label(parent, SWT.WRAP);
        label.setText(words.replace("&", "&&"));
        label.setForeground(color);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(WIDTH, SWT.DEFAULT).applyTo(label);
        text.append(words).append('\n');
        return label;
    }

    private void phase(Composite parent, Phase phase, String name) {
        PhaseAnswer answer = pair.answer().in(phase);
        VerdictLook look = VerdictLook.of(answer);
        new Label(parent, SWT.NONE).setImage(images.of(look));
        String clearance = answer.clearance().map(c -> ", worst clearance " + lengths.clearance(c.worst())).orElse("");
        Label label = new Label(parent, SWT.NONE);
        label.setText(name + ": " + look.word() + clearance);
        label.setForeground(foreground());
        text.append(label.getText()).append('\n');
    }

    private void explain(Composite parent) {
        PhaseAnswer answer = pair.answer().in();
        answer.limiting().ifPresent(limiting -> line(parent, "Decides: " + words.place(limiting), foreground()));
        List<AnswerLine> said = words.explain(answer, Phase.IN, pair.names(), pair.question().direction()).stream()
                .filter(line -> line.kind() != AnswerLine.Kind.SUMMARY && line.kind() != AnswerLine.Kind.SOURCE)
                .limit(MOST_REASONS).toList();
        said.forEach(reason -> line(parent, lead(reason.kind()) + reason.text(), foreground()));
    }

    private static String lead(AnswerLine.Kind kind) {
        return switch (kind) {
            case CONFLICT -> "Conflict: ";
            case CAUTION -> "Caution: ";
            default -> "";
        };
    }

    private void picture() {
        PictureCanvas canvas = new PictureCanvas(control);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.TOP).hint(PICTURE_WIDTH, PICTURE_HEIGHT).applyTo(canvas);
        CrossSectionDrawing across = new CrossSectionDrawing(reasons);
        canvas.draw((width, height) -> across.ofPair(pair.question(), pair.answer().in(), Phase.IN, width, height));
    }

    Composite control() {
        return control;
    }

    String text() {
        return text.toString();
    }
}
