/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;
import java.util.function.IntConsumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.fit.device.Phase;
import org.ferrule.ui.fit.follow.TurningSash;
import org.ferrule.ui.look.Tick;

/** What came of a stack: its levels in a list, and why, of the one that is chosen or else of the whole. */
final class StackExplanation {

    private static final int[] WEIGHTS = { 42, 58 };

    private final StackLevels levels;
    private final StackText text;
    private Phase phase = Phase.IN;

    /**
     * Creates the part.
     *
     * @param changed is run when the other way is to be explained
     * @param chosen is told the number of a level that the user chooses
     */
    StackExplanation(Composite parent, Runnable changed, IntConsumer chosen) {
        Composite control = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(2, 4).spacing(4, 4).applyTo(control);
        way(control, "Going in", Phase.IN, changed).setSelection(true);
        way(control, "Coming out", Phase.OUT, changed);
        SashForm parts = TurningSash.in(control);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(120, 60).applyTo(parts);
        levels = new StackLevels(parts, chosen);
        text = new StackText(parts);
        parts.setWeights(WEIGHTS);
    }

    private Button way(Composite parent, String words, Phase each, Runnable changed) {
        Button button = Tick.choice(parent, words);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (button.getSelection()) {
                phase = each;
                changed.run();
            }
        }));
        return button;
    }

    /** Returns which way is explained. */
    Phase phase() {
        return phase;
    }

    /** Explains one device, or with -1 the whole. */
    void show(AnsweredStack answered, int device) {
        levels.show(answered, phase, device < 0 ? -1 : answered.levels().get(device));
        text.show(answered, device, phase);
    }

    /** Says only why there is no answer. */
    void say(String words) {
        levels.clear();
        text.say(words);
    }

    /** Returns why. */
    String words() {
        return text.words();
    }

    /** Returns the lines of the levels. */
    List<List<String>> levels() {
        return levels.texts();
    }
}
