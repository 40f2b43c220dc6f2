/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

import org.eclipse.swt.widgets.Composite;
import org.ferrule.chart.drawing.StackDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.picture.Caption;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;

/** A section along all devices of a stack. */
final class StackPicture {

    /** Drawn higher than that for its width, nothing of it would be clearer. */
    private static final double HIGHEST = 0.8;

    private static final String LEVEL = "level:";

    private final PictureCanvas canvas;
    private final String title;
    private Optional<AnsweredStack> drawn = Optional.empty();

    /**
     * Creates an empty picture.
     *
     * @param title of the view, told with the picture when it leaves the program
     * @param clicked is told the number of a level that is clicked at
     */
    StackPicture(Composite parent, String title, IntConsumer clicked) {
        this.title = title;
        canvas = new PictureCanvas(parent);
        canvas.ownedBy(() -> drawn.map(this::owner).orElse(PictureOwner.UNKNOWN));
        canvas.onClick(groups -> level(groups).ifPresent(clicked::accept));
    }

    private static Optional<Integer> level(List<String> groups) {
        return groups.stream().filter(group -> group.startsWith(LEVEL)).findFirst()
                .map(group -> Integer.valueOf(group.substring(LEVEL.length())));
    }

    private PictureOwner owner(AnsweredStack answered) {
        String revision = answered.rules().revision().isEmpty() ? "" : ", rev. " + answered.rules().revision();
        return PictureOwner.of(Caption.of(title, "Rule set: " + answered.rules().title() + revision,
                "The instructions for use and the judgement of the operator decide."));
    }

    /** Draws a stack, one of its devices marked; -1 for none. */
    void show(AnsweredStack answered, Phase phase, int device) {
        drawn = Optional.of(answered);
        StackDrawing drawing = new StackDrawing(ReasonWords.english(ShownUnits.first()));
        canvas.draw((width, height) -> drawing.of(answered.answer(), phase, width,
                Math.min(height, HIGHEST * width)));
        canvas.highlight(device < 0 ? null : LEVEL + answered.levels().get(device));
    }

    /** Draws nothing, and says why. */
    void clear(String why) {
        drawn = Optional.empty();
        canvas.clear(why);
    }

    PictureCanvas canvas() {
        return canvas;
    }
}
