/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.ferrule.fit.device.Phase;
import org.ferrule.ui.look.Tick;

/** Explains several answers side by side, each with its difference from the first one. */
public final class ComparedPairs {

    /** More would not be readable side by side. */
    public static final int MOST = 4;

    private final Composite control;
    private final Button comingOut;
    private final SashForm columns;
    private final List<ComparedPair> shown = new ArrayList<>();
    private List<AskedPair> pairs = List.of();

    /** Creates the widget. */
    public ComparedPairs(Composite parent) {
        control = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(8, 4).applyTo(control);
        comingOut = Tick.box(control, "Coming out, and not going in");
        comingOut.setToolTipText("Compare the answers for the way out, after use");
        comingOut.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> fill()));
        columns = new SashForm(control, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).hint(120, 80).applyTo(columns);
    }

    /** Returns the widget. */
    public Control control() {
        return control;
    }

    /** Explains these pairs: two to {@link #MOST}. */
    public void show(List<AskedPair> wanted) {
        pairs = List.copyOf(wanted);
        if (shown.size() != pairs.size()) {
            shown.forEach(column -> column.control().dispose());
            shown.clear();
            pairs.forEach(pair -> shown.add(new ComparedPair(columns)));
            columns.layout(true, true);
        }
        fill();
    }

    private void fill() {
        Phase phase = comingOut.getSelection() ? Phase.OUT : Phase.IN;
        for (int i = 0; i < pairs.size(); i++) {
            shown.get(i).show(pairs.get(i), pairs.get(0), phase);
        }
    }

    /** Returns what is compared. */
    public List<AskedPair> shown() {
        return pairs;
    }

    /** Returns what is said above each answer. */
    public List<String> heads() {
        return shown.stream().map(ComparedPair::head).toList();
    }

    /** Puts the cursor into the first answer. */
    public boolean setFocus() {
        return !shown.isEmpty() && shown.get(0).setFocus();
    }
}
