/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.ferrule.chart.drawing.LongitudinalDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.picture.Caption;
import org.ferrule.picture.Picture;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;

/**
 * Explains an answer: verdicts going in and coming out, reasons in words, the device in the lumen along its length, and
 * across at the place that decides, or what else the checks have to show. Lies down or stands up with the room that it has.
 */
public final class AnswerPanel {

    /** Drawn higher than that for its width, a lengthwise section shows nothing but how far diameters are stretched. */
    private static final double HIGHEST = 0.6;

    private static final int[] WEIGHTS = { 34, 42, 24 };
    private static final double STANDS_BELOW = 1.25;

    private final Composite control;
    private final Label title;
    private final PhaseSwitch phases;
    private final SashForm parts;
    private final AnswerText text;
    private final PictureCanvas along;
    private final ShownPictures pictures;
    private final LatestWork details;
    private AskedPair pair;
    private FitAnswer explained;

    /** Creates the panel. */
    public AnswerPanel(Composite parent) {
        control = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(8, 4).numColumns(2).applyTo(control);
        phases = new PhaseSwitch(control, phase -> explain());
        title = new Label(control, SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(title);
        parts = new SashForm(control, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(120, 80).applyTo(parts);
        text = new AnswerText(parts);
        along = new PictureCanvas(parts);
        pictures = new ShownPictures(parts);
        along.ownedBy(this::owner);
        pictures.ownedBy(this::owner);
        parts.setWeights(WEIGHTS);
        details = new LatestWork(control, "Look closer at an answer");
        parts.addListener(SWT.Resize, event -> turn());
    }

    /** What is told below a picture of the answer when it leaves the program. */
    private PictureOwner owner() {
        if (pair == null) {
            return PictureOwner.UNKNOWN;
        }
        RuleSet rules = pair.question().rules();
        String revision = rules.revision().isEmpty() ? "" : ", rev. " + rules.revision();
        return PictureOwner.of(Caption.of(title.getText(), "Rule set: " + rules.title() + revision,
                "The instructions for use and the judgement of the operator decide."));
    }

    private void turn() {
        Point size = parts.getSize();
        int orientation = size.x < STANDS_BELOW * size.y ? SWT.VERTICAL : SWT.HORIZONTAL;
        if (parts.getOrientation() != orientation) {
            parts.setOrientation(orientation);
        }
    }

    /** Returns the widget. */
    public Control control() {
        return control;
    }

    /** Returns the pair that is explained. */
    public Optional<AskedPair> shown() {
        return Optional.ofNullable(pair);
    }

    /** Returns which answer is explained. */
    public Phase phase() {
        return phases.phase();
    }

    /** Explains the answer about a pair, and what a closer look shows of it as soon as that is known. */
    public void show(AskedPair asked) {
        pair = asked;
        explained = asked.answer();
        title.setText(asked.question().inner().device().name() + "  in  " + asked.question().outer().device().name());
        phases.show(asked);
        parts.setMaximizedControl(null);
        explain();
        details.start(asked::inDetail, this::showCloser);
    }

    private void showCloser(FitAnswer closer) {
        if (!closer.equals(explained)) {
            explained = closer;
            explain();
        }
    }

    /** Explains nothing, and says why. */
    public void clear(String why) {
        pair = null;
        details.forget();
        title.setText("");
        phases.clear();
        text.say(why);
        along.clear("");
        pictures.clear();
        parts.setMaximizedControl(text.control());
    }

    private void explain() {
        if (pair == null) {
            return;
        }
        AskedPair shown = pair.with(explained);
        Phase phase = phases.phase();
        PhaseAnswer answer = shown.answer().in(phase);
        text.show(shown, phase);
        LongitudinalDrawing lengthwise = new LongitudinalDrawing(ReasonWords.english(ShownUnits.now()));
        along.draw((width, height) -> lengthwise.ofPair(shown.question(), answer, phase, width,
                Math.min(height, HIGHEST * width)));
        pictures.show(shown, answer, phase);
    }

    /** Returns the names of the pictures that there are of the answer. */
    public List<String> pictures() {
        return pictures.names();
    }

    /** Returns the picture that is chosen of those, as it is shown. */
    public Optional<Picture> picture() {
        return pictures.shown();
    }

    /** Puts the cursor into the panel. */
    public boolean setFocus() {
        return text.control().setFocus();
    }
}
