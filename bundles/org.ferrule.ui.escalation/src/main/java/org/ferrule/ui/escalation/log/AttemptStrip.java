/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.log;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.model.AttemptOutcome;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Closing;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.escalation.live.PlannedCase;
import org.ferrule.ui.look.Colours;

/** Logs the next step of a plan: one key or button tells how it ended, a small form what it took. */
public final class AttemptStrip {

    private static final Map<Character, AttemptOutcome> KEYS = keys();

    private final Composite control;
    private final Composite idle;
    private final Label next;
    private final Map<AttemptOutcome, Button> buttons = new LinkedHashMap<>();
    private final Button close;
    private final AttemptForm form;
    private final LivePlan live;
    private final Control keyboard;
    private PlannedCase shown;

    /**
     * Creates the strip.
     *
     * @param keyboard what hears the keys, and has the focus afterwards
     * @param closing closes the case
     */
    public AttemptStrip(Composite parent, FormToolkit toolkit, LivePlan live, Control keyboard, Runnable closing) {
        this.live = live;
        this.keyboard = keyboard;
        control = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().applyTo(control);
        idle = toolkit.createComposite(control);
        GridLayoutFactory.fillDefaults().numColumns(5).margins(1, 1).spacing(8, 0).applyTo(idle);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(idle);
        next = toolkit.createLabel(idle, "");
        next.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(120, SWT.DEFAULT)
                .applyTo(next);
        KEYS.forEach((key, outcome) -> buttons.put(outcome, button(toolkit, outcome)));
        close = toolkit.createButton(idle, "Close case...", SWT.PUSH);
        close.setToolTipText("Writes what was planned and used into the case, as a record");
        close.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> closing.run()));
        form = new AttemptForm(toolkit, control, this::finish);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(form.control());
        form.control().setVisible(false);
        keyboard.addListener(SWT.KeyDown, this::key);
    }

    private static Map<Character, AttemptOutcome> keys() {
        Map<Character, AttemptOutcome> keys = new LinkedHashMap<>();
        keys.put('f', AttemptOutcome.FAILED);
        keys.put('c', AttemptOutcome.CROSSED);
        keys.put('g', AttemptOutcome.GIVEN_UP);
        return keys;
    }

    private Button button(FormToolkit toolkit, AttemptOutcome outcome) {
        Button button = toolkit.createButton(idle, label(outcome, null), SWT.PUSH);
        button.setToolTipText("Logs it as the next entry; Ctrl+Z takes it back");
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> begin(outcome)));
        return button;
    }

    /** What the end of a step is called; a set-up does not cross, it is in place. */
    static String word(AttemptOutcome outcome, Rung rung) {
        return switch (outcome) {
            case CROSSED -> rung != null && rung.isSetup() ? "Came into place" : "Crossed";
            case FAILED -> "Failed";
            case GIVEN_UP -> "Given up";
        };
    }

    private static String label(AttemptOutcome outcome, Rung rung) {
        char key = KEYS.entrySet().stream().filter(e -> e.getValue() == outcome).findFirst().orElseThrow().getKey();
        return Character.toUpperCase(key) + "  " + word(outcome, rung);
    }

    private void key(Event event) {
        AttemptOutcome outcome = KEYS.get(Character.toLowerCase(event.character));
        if (outcome != null && (event.stateMask & SWT.MODIFIER_MASK & ~SWT.SHIFT) == 0) {
            begin(outcome);
        }
    }

    private boolean ready() {
        return shown != null && !live.stale() && live.session().editable() && closed().isEmpty()
                && !shown.plan().rungs().isEmpty();
    }

    /** The day on which the case was closed; nothing while it is open. */
    private Optional<String> closed() {
        return live.file().map(CaseDocument::getClosing).map(Closing::getClosed);
    }

    private void begin(AttemptOutcome outcome) {
        if (ready()) {
            show(form.control());
            form.show(shown, outcome);
        } else {
            closed().ifPresent(day -> refuse("Not logged: the case was closed on " + day));
        }
    }

    private void refuse(String why) {
        next.setText(why);
        next.setForeground(Colours.error());
    }

    private void finish(Optional<AttemptEntry> entry) {
        show(idle);
        keyboard.setFocus();
        entry.ifPresent(attempt -> attempt.log(live.session()));
    }

    private void show(Composite top) {
        for (Composite each : List.of(idle, form.control())) {
            each.setVisible(each == top);
            ((GridData) each.getLayoutData()).exclude = each != top;
        }
        control.getParent().layout(true, true);
    }

    /** Returns what is said of the next step, or of why nothing is logged. */
    public String text() {
        return next.getText();
    }

    /** Shows which step is next. */
    public void show(Optional<PlannedCase> planned, boolean stale) {
        shown = planned.orElse(null);
        Rung first = planned.flatMap(p -> p.plan().next()).orElse(null);
        next.setForeground(idle.getForeground());
        next.setText(closed().map(day -> "The case was closed on " + day).orElseGet(() -> first == null
                ? "Nothing to be logged" : ("Next: " + shown.words().rungs().heading(first)).replace("&", "&&")));
        buttons.forEach((outcome, button) -> {
            button.setText(label(outcome, first));
            button.setEnabled(ready());
        });
        close.setEnabled(closed().isEmpty() && live.session().editable());
        if (!ready() && !stale && !idle.getVisible()) {
            show(idle);
        }
        idle.layout();
    }

    /** Returns the control to lay out. */
    public Composite control() {
        return control;
    }
}
