/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.LengthWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.ui.look.Pressed;

/** The verdicts going in and coming out side by side; the one that is pressed is explained. */
final class PhaseSwitch {

    private final Map<Phase, Button> buttons = new EnumMap<>(Phase.class);
    private final Composite control;
    private final VerdictImages images;
    private Phase phase = Phase.IN;

    PhaseSwitch(Composite parent, Consumer<Phase> listener) {
        control = new Composite(parent, SWT.NONE);
        control.setVisible(false);
        GridDataFactory.fillDefaults().exclude(true).applyTo(control);
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.marginLeft = 0;
        control.setLayout(layout);
        images = new VerdictImages(control);
        for (Phase each : Phase.values()) {
            buttons.put(each, button(each, listener));
        }
    }

    private Button button(Phase each, Consumer<Phase> listener) {
        Button button = new Button(control, SWT.TOGGLE);
        Pressed.mark(button);
        button.setText(name(each));
        button.setEnabled(false);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            phase = each;
            buttons.forEach((other, b) -> b.setSelection(other == each));
            listener.accept(each);
        }));
        return button;
    }

    private static String name(Phase each) {
        return each == Phase.IN ? "Going in" : "Coming out";
    }

    Control control() {
        return control;
    }

    Phase phase() {
        return phase;
    }

    void show(AskedPair pair) {
        LengthWords lengths = new LengthWords(ShownUnits.first());
        buttons.forEach((each, button) -> show(button, each, pair.answer().in(each), lengths));
        offer(true);
    }

    /** Where there is no answer there is nothing to switch. */
    private void offer(boolean offered) {
        control.setVisible(offered);
        ((GridData) control.getLayoutData()).exclude = !offered;
        control.getParent().layout(true, true);
    }

    private void show(Button button, Phase each, PhaseAnswer answer, LengthWords lengths) {
        VerdictLook look = VerdictLook.of(answer);
        String clearance = answer.clearance().map(c -> ", " + lengths.clearance(c.worst())).orElse("");
        button.setEnabled(true);
        button.setSelection(each == phase);
        button.setImage(images.of(look));
        button.setText(name(each) + ": " + look.word() + clearance);
        button.setToolTipText("Worst clearance; press to explain this answer");
    }

    void clear() {
        buttons.forEach((each, button) -> {
            button.setImage(null);
            button.setText(name(each));
            button.setEnabled(false);
        });
        offer(false);
    }
}
