/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.log;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.ui.look.DropDown;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.model.AttemptOutcome;
import org.ferrule.ui.escalation.live.PlannedCase;
import org.ferrule.ui.look.Colours;

/** The small form that a key opens: what it took, as planned unless corrected. Enter logs it, Escape does not. */
final class AttemptForm {

    private static final int STEP_WIDTH = 180;

    private final Composite control;
    private final Label outcomeWords;
    private final Label problem;
    private final DropDown step;
    private final List<AmountField> amounts;
    private final Text remark;
    private final Button opened;
    private final Consumer<Optional<AttemptEntry>> done;
    private List<Rung> rungs = List.of();
    private AttemptOutcome outcome = AttemptOutcome.FAILED;

    /**
     * Creates the form.
     *
     * @param done gets what is to be logged, or nothing
     */
    AttemptForm(FormToolkit toolkit, Composite parent, Consumer<Optional<AttemptEntry>> done) {
        this.done = done;
        control = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(control);
        Composite first = row(toolkit, 12);
        outcomeWords = toolkit.createLabel(first, "Given up:");
        outcomeWords.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        step = new DropDown(first, STEP_WIDTH).onChoice(this::prefill);
        toolkit.adapt(step.control(), true, false);
        amounts = Stream.of("Minutes", "Contrast, mL", "Dose, mGy", "Money")
                .map(label -> new AmountField(toolkit, first, label)).toList();
        Composite second = row(toolkit, 5);
        toolkit.createLabel(second, "Remark");
        remark = toolkit.createText(second, "", SWT.BORDER | SWT.SINGLE);
        remark.setMessage("nothing that tells who the patient is");
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(remark);
        opened = toolkit.createButton(second, "Boxes opened", SWT.CHECK);
        opened.setToolTipText("What the plan took for it is gone from the shelf");
        button(toolkit, second, "Log it", this::log);
        button(toolkit, second, "Cancel", () -> done.accept(Optional.empty()));
        problem = toolkit.createLabel(control, "");
        problem.setForeground(Colours.error());
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(problem);
        Stream.concat(amounts.stream().map(AmountField::control), Stream.of(remark)).forEach(this::listen);
    }

    private Composite row(FormToolkit toolkit, int columns) {
        Composite row = toolkit.createComposite(control);
        GridLayoutFactory.fillDefaults().numColumns(columns).margins(1, 1).spacing(6, 0).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        return row;
    }

    private static void button(FormToolkit toolkit, Composite row, String text, Runnable action) {
        toolkit.createButton(row, text, SWT.PUSH)
                .addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
    }

    private void listen(Text text) {
        text.addListener(SWT.DefaultSelection, event -> log());
        text.addListener(SWT.KeyDown, this::escape);
    }

    private void escape(Event event) {
        if (event.keyCode == SWT.ESC) {
            event.doit = false;
            done.accept(Optional.empty());
        }
    }

    Composite control() {
        return control;
    }

    /** Fills in what the plan says of its next step. */
    void show(PlannedCase planned, AttemptOutcome ended) {
        outcome = ended;
        rungs = planned.plan().rungs();
        outcomeWords.setText(AttemptStrip.word(ended, rungs.get(0)) + ":");
        step.show(rungs.stream().map(planned.words().rungs()::heading).toList(), 0);
        remark.setText("");
        prefill();
        amounts.get(0).control().setFocus();
    }

    private Rung rung() {
        return rungs.get(Math.max(0, step.chosen()));
    }

    private void prefill() {
        Costs costs = rung().costs();
        amounts.get(0).show(costs.minutes());
        amounts.get(1).show(costs.contrastMl());
        amounts.get(2).show(costs.doseMgy());
        amounts.get(3).show(costs.money());
        opened.setSelection(outcome != AttemptOutcome.GIVEN_UP && !rung().taken().isEmpty());
        opened.setEnabled(!rung().taken().isEmpty());
        outcomeWords.setText(AttemptStrip.word(outcome, rung()) + ":");
        showProblem("");
        control.layout(true, true);
    }

    private void log() {
        Optional<AmountField> wrong = amounts.stream().filter(field -> field.problem().isPresent()).findFirst();
        if (wrong.isPresent()) {
            showProblem(wrong.get().problem().orElseThrow());
            wrong.get().setFocus();
            return;
        }
        done.accept(Optional.of(new AttemptEntry(rung(), outcome, amounts.get(0).amount().orElseThrow(),
                amounts.get(1).amount().orElseThrow(), amounts.get(2).amount().orElseThrow(),
                amounts.get(3).amount().orElseThrow(), opened.getSelection(), remark.getText())));
    }

    private void showProblem(String words) {
        problem.setText(words);
        problem.setVisible(!words.isEmpty());
        ((GridData) problem.getLayoutData()).exclude = words.isEmpty();
        control.getParent().getParent().layout(true, true);
    }
}
