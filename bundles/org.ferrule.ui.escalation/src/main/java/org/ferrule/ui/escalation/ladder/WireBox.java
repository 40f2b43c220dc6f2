/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.ferrule.escalation.plan.WireCheck;
import org.ferrule.ui.escalation.form.FactEdits;
import org.ferrule.ui.look.Pressed;

/**
 * What must be seen before everything: the wire in the distal true lumen, in two orthogonal views. The box is always
 * there; it only tells what was stated.
 */
final class WireBox {

    private static final String UNSTYLED = "org.eclipse.e4.ui.css.disabled";
    private static final String ASKED = "Wire in the distal true lumen, seen in two orthogonal views?";
    private static final String SEEN = "Wire seen in the distal true lumen, in two orthogonal views";
    private static final String DENIED = "The wire is NOT in the distal true lumen: stop, and do not go on over it";

    private final FactEdits facts;
    private final Composite control;
    private final StyledText words;
    private final Button seen;
    private final Button denied;
    private LadderFonts fonts;

    WireBox(Composite parent, FactEdits facts) {
        this.facts = facts;
        control = new Composite(parent, SWT.BORDER);
        unstyled(control);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(10, 6).spacing(10, 0).applyTo(control);
        words = new StyledText(control, SWT.READ_ONLY | SWT.WRAP | SWT.NO_FOCUS);
        unstyled(words);
        words.setEnabled(false);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(160, SWT.DEFAULT)
                .applyTo(words);
        seen = button("Seen", true);
        denied = button("Not so", false);
        fonts = new LadderFonts(control.getDisplay(), LadderSize.points());
        control.addListener(SWT.Dispose, event -> fonts.dispose());
        show(true);
    }

    private static void unstyled(Control styled) {
        styled.setData(UNSTYLED, Boolean.TRUE);
    }

    private Button button(String text, boolean holds) {
        Button button = new Button(control, SWT.TOGGLE);
        button.setText(text);
        Pressed.mark(button);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> facts.state(WireCheck.FACT,
                button.getSelection() ? Optional.of(holds) : Optional.empty())));
        return button;
    }

    Control control() {
        return control;
    }

    /** Shows what is stated now. */
    void show(boolean editable) {
        Optional<Boolean> stated = facts.stated(WireCheck.FACT);
        boolean holds = stated.orElse(false);
        seen.setSelection(holds);
        denied.setSelection(stated.isPresent() && !holds);
        seen.setEnabled(editable);
        denied.setEnabled(editable);
        words.setText(stated.isEmpty() ? "\u2610  " + ASKED : holds ? "\u2611  " + SEEN : "\u25b2  " + DENIED);
        LadderInk ground = holds ? LadderInk.CARD : LadderInk.WARN_GROUND;
        control.setBackground(ground.color());
        words.setBackground(ground.color());
        words.setForeground((holds ? LadderInk.TEXT : LadderInk.WARN).color());
        words.setFont(fonts.strong());
        control.layout(true);
    }

    void resized() {
        LadderFonts former = fonts;
        fonts = new LadderFonts(control.getDisplay(), LadderSize.points());
        words.setFont(fonts.strong());
        former.dispose();
    }
}
