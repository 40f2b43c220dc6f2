/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.signoff;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Section;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.signoff.SignOffState;
import org.ferrule.engine.signoff.SignOffWords;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.section.Reflow;
import org.ferrule.ui.fit.chart.AnswersListener;
import org.ferrule.ui.fit.chart.LiveAnswers;
import org.ferrule.ui.look.Colours;

/** Who has signed the chart off, what has changed since, and signing it off anew. */
public final class SignOffSection implements AnswersListener {

    private static final int LINES = 6;
    private static final int LEAST_WIDTH = 200;

    private final SignOffWords words = new SignOffWords();
    private final SignOffAct act;
    private final LiveAnswers answers;
    private final IManagedForm managed;
    private final Composite client;
    private final Label head;
    private final Text by;
    private final Label refusal;
    private final Button withdraw;
    private final ChangeTable changes;

    /**
     * Creates the section.
     *
     * @param reveal shows the cell of two lines, given by their keys
     */
    public SignOffSection(DocumentSession session, LiveAnswers answers, IManagedForm managed, Composite column,
            BiConsumer<String, String> reveal) {
        this.act = new SignOffAct(session, answers);
        this.answers = answers;
        this.managed = managed;
        FormToolkit toolkit = managed.getToolkit();
        Section section = toolkit.createSection(column, ExpandableComposite.TITLE_BAR);
        section.setText("Sign-off");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(section);
        client = toolkit.createComposite(section);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(0, 2).spacing(6, 6).applyTo(client);
        head = wrapped(toolkit);
        changes = new ChangeTable(client, LINES, reveal);
        toolkit.createLabel(client, "Name or initials");
        by = toolkit.createText(client, "");
        by.setToolTipText("Who has looked at every verdict and answers for them");
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(by);
        by.addListener(SWT.DefaultSelection, event -> signOff());
        button(toolkit, "Sign off", this::signOff);
        refusal = wrapped(toolkit);
        refusal.setForeground(Colours.error());
        withdraw = button(toolkit, "Withdraw", act::withdraw);
        withdraw.setToolTipText("Takes the sign-off back; can be undone");
        section.setClient(client);
        answers.addListener(this);
        section.addDisposeListener(event -> answers.removeListener(this));
        show(answers.signed());
    }

    private Label wrapped(FormToolkit toolkit) {
        Label label = toolkit.createLabel(client, "", SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).hint(LEAST_WIDTH, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private Button button(FormToolkit toolkit, String text, Runnable work) {
        Button button = toolkit.createButton(client, text, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        return button;
    }

    private void signOff() {
        Optional<String> hindrance = act.hindrance(by.getText());
        refuse(hindrance.map(reason -> "Not signed off. " + reason).orElse(""));
        if (hindrance.isEmpty()) {
            try {
                act.signOff(by.getText());
                by.setText("");
            } catch (CoreException e) {
                StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
            }
        }
    }

    private void refuse(String reason) {
        if (!reason.equals(refusal.getText())) {
            refusal.setText(reason);
            Reflow.around(managed, refusal);
        }
    }

    @Override
    public void answered(SolvedChart solved, boolean onlyChanges) {
        refuse("");
    }

    @Override
    public void signedChanged() {
        show(answers.signed());
    }

    private void show(Optional<SignOffState> state) {
        head.setText(state.map(words::head).orElse("Nobody has signed this chart off."));
        head.setForeground(state.filter(s -> !s.upToDate()).isPresent() ? Colours.error() : by.getForeground());
        changes.show(state);
        withdraw.setVisible(state.isPresent());
        Reflow.around(managed, head);
    }

    /** Returns what is listed as changed, for those who want to look at it. */
    public List<String> listed() {
        return changes.texts();
    }

    /** Puts the cursor into the field for the name. */
    public boolean setFocus() {
        FormToolkit.ensureVisible(by);
        return by.setFocus();
    }
}
