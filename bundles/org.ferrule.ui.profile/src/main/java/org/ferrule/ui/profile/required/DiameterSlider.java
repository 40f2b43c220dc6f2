/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.required;

import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.ferrule.profile.required.RequiredLanes;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** A slider for a diameter, in steps of a micrometre; the arrow keys move it by one, page keys by a hundredth of a millimetre. */
final class DiameterSlider {

    private static final Length STEP = Length.of("1", LengthUnit.MICROMETRE);
    private static final int PAGE = 10;
    private static final int WORDS_HEIGHT = 2;

    private final Scale scale;
    private final Label words;
    private final Button back;
    private final Consumer<Length> moved;
    private Length from = Length.ZERO;
    private RequiredLanes lanes;

    /** Creates a slider that is told nothing yet; the listener hears every move. */
    DiameterSlider(Composite parent, Consumer<Length> moved) {
        this.moved = moved;
        Composite row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 2).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        scale = new Scale(row, SWT.HORIZONTAL);
        scale.setToolTipText("The diameter of the section; the partners that flip are named below");
        scale.setPageIncrement(PAGE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(scale);
        back = new Button(row, SWT.PUSH);
        back.setText("As printed");
        words = new Label(row, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1)
                .hint(200, WORDS_HEIGHT * (words.computeSize(SWT.DEFAULT, SWT.DEFAULT).y + 2)).applyTo(words);
        scale.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> moved.accept(diameter())));
        back.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> backToPrinted()));
        enable();
    }

    private void backToPrinted() {
        put(lanes.printed());
        moved.accept(lanes.printed());
    }

    private void enable() {
        scale.setEnabled(lanes != null);
        back.setEnabled(lanes != null);
    }

    /** Slides along other lanes, at a diameter; null slides along nothing. */
    void show(RequiredLanes next, Length diameter) {
        lanes = next;
        if (next != null) {
            from = STEP.times(next.from().thirdNanometres() / STEP.thirdNanometres());
            scale.setMaximum(steps(next.to()));
            put(diameter);
        }
        enable();
    }

    private int steps(Length diameter) {
        return (int) Math.max(1, diameter.minus(from).thirdNanometres() / STEP.thirdNanometres());
    }

    private void put(Length diameter) {
        scale.setSelection(diameter.compareTo(from) <= 0 ? 0 : steps(diameter));
    }

    private Length diameter() {
        return from.plus(STEP.times(scale.getSelection()));
    }

    /** Says what the diameter does. */
    void say(String text) {
        words.setText(text);
        words.setToolTipText(text);
    }

    /** Returns what is said. */
    String said() {
        return words.getText();
    }

    /** Returns the slider itself. */
    Scale control() {
        return scale;
    }
}
