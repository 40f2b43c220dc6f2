/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.ui.escalation.form.FactEdits;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.look.Colours;

/** What stands above the ladder and does not scroll: what is wrong, the wire check, the budgets, the size. */
final class LadderHead {

    private static final int MOST = 3;

    private final Composite control;
    private final Label problems;
    private final Label state;
    private final WireBox wire;
    private final BudgetBars bars;

    LadderHead(Composite parent, FormToolkit toolkit, LivePlan live, Runnable resized) {
        control = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(control);
        problems = toolkit.createLabel(control, "", SWT.WRAP);
        problems.setForeground(Colours.error());
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(200, SWT.DEFAULT).exclude(true)
                .applyTo(problems);
        wire = new WireBox(control, new FactEdits(live.session()));
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(wire.control());
        bars = new BudgetBars(control);
        GridDataFactory.fillDefaults().grab(true, false).hint(300, SWT.DEFAULT).applyTo(bars);
        Composite side = toolkit.createComposite(control);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(2, 2).applyTo(side);
        GridDataFactory.swtDefaults().align(SWT.END, SWT.BEGINNING).applyTo(side);
        size(toolkit, side, "A\u2212", "Smaller lettering", -1, resized);
        size(toolkit, side, "A+", "Larger lettering", 1, resized);
        state = toolkit.createLabel(side, "Planning...");
        GridDataFactory.fillDefaults().span(2, 1).applyTo(state);
    }

    private void size(FormToolkit toolkit, Composite parent, String text, String meaning, int step, Runnable resized) {
        Button button = toolkit.createButton(parent, text, SWT.PUSH);
        button.setToolTipText(meaning);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            LadderSize.step(step);
            wire.resized();
            bars.resized();
            resized.run();
            control.getParent().layout(true, true);
        }));
    }

    Composite control() {
        return control;
    }

    /** Shows the plan with the step that is selected, or what keeps it from being made. */
    void show(LivePlan live, Optional<Rung> selected) {
        wire.show(live.session().editable());
        boolean settled = !live.stale();
        state.setText(settled ? "" : live.problems().isEmpty() ? "Planning..." : "Not planned");
        state.setToolTipText(settled ? null : "What is shown was planned before the last edit");
        if (live.stale()) {
            bars.await();
        } else {
            live.shown().ifPresent(planned -> bars.show(planned, selected));
        }
        showProblems(live.problems());
        control.getParent().layout(true, true);
    }

    private void showProblems(List<String> found) {
        String words = String.join("\n", found.stream().distinct().limit(MOST).toList());
        String more = found.size() > MOST ? "\nand " + (found.size() - MOST) + " more; see Problems" : "";
        problems.setText((words + more).replace("&", "&&"));
        problems.setVisible(!found.isEmpty());
        ((GridData) problems.getLayoutData()).exclude = found.isEmpty();
    }

    /** Returns what is shown of the budgets, in words. */
    String budgets() {
        return bars.words();
    }
}
