/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Fact;
import org.ferrule.model.StatedFact;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.ui.edit.section.PartBlock;
import org.ferrule.ui.edit.section.Reflow;
import org.ferrule.ui.escalation.live.LivePlan;

/** The facts that the techniques ask for, each stated to hold, stated not to hold, or not stated. */
final class FactsBlock implements PartBlock {

    private static final List<String> CHOICES = List.of("holds", "does not hold", "not stated");

    private final LivePlan live;
    private final IManagedForm managed;
    private final FactEdits edits;
    private final Composite control;
    private final Map<String, List<Button>> rows = new LinkedHashMap<>();
    private Map<String, String> shown = Map.of();

    FactsBlock(LivePlan live, IManagedForm managed, Composite parent) {
        this.live = live;
        this.managed = managed;
        this.edits = new FactEdits(live.session());
        control = managed.getToolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(8, 4).applyTo(control);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(control);
    }

    /** The words of all facts that the techniques know, and the ids of those that only the case knows. */
    private Map<String, String> facts() {
        Map<String, String> facts = new LinkedHashMap<>();
        Optional<CaseDocument> file = live.file();
        List<Fact> known = file.flatMap(live.documents()::techniques).map(TechniqueLibrary::getFacts)
                .map(List::copyOf).orElse(List.of());
        known.stream().filter(fact -> fact.getId() != null)
                .forEach(fact -> facts.put(fact.getId(), fact.getWords() == null ? fact.getId() : fact.getWords()));
        file.map(CaseDocument::getFacts).map(List::copyOf).orElse(List.of()).stream().map(StatedFact::getFact)
                .filter(id -> id != null).forEach(id -> facts.putIfAbsent(id, id + " (not asked by the techniques)"));
        return facts;
    }

    @Override
    public void show(EObject object) {
        Map<String, String> facts = facts();
        if (!facts.equals(shown) || rows.isEmpty()) {
            shown = facts;
            rows.clear();
            List.of(control.getChildren()).forEach(Control::dispose);
            facts.forEach(this::addRow);
            if (facts.isEmpty()) {
                managed.getToolkit().createLabel(control, "The techniques of the case ask for nothing.");
            }
            Reflow.around(managed, control);
        }
        rows.forEach((fact, buttons) -> select(buttons, edits.stated(fact)));
    }

    private void addRow(String fact, String words) {
        Label label = managed.getToolkit().createLabel(control, words.replace("&", "&&"), SWT.WRAP);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(140, SWT.DEFAULT)
                .applyTo(label);
        Composite group = managed.getToolkit().createComposite(control);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(6, 0).applyTo(group);
        GridDataFactory.swtDefaults().span(3, 1).applyTo(group);
        List<Button> buttons = CHOICES.stream().map(choice -> button(group, fact, words, choice)).toList();
        rows.put(fact, buttons);
    }

    private Button button(Composite group, String fact, String words, String choice) {
        Button button = managed.getToolkit().createButton(group, choice, SWT.RADIO);
        button.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = words + ": " + choice;
            }
        });
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (button.getSelection()) {
                int place = CHOICES.indexOf(choice);
                edits.state(fact, place == 2 ? Optional.empty() : Optional.of(place == 0));
            }
        }));
        return button;
    }

    private void select(List<Button> buttons, Optional<Boolean> stated) {
        int place = stated.map(holds -> holds ? 0 : 1).orElse(2);
        for (int i = 0; i < buttons.size(); i++) {
            buttons.get(i).setSelection(i == place);
            buttons.get(i).setEnabled(live.session().editable());
        }
    }

    @Override
    public boolean reveal(EObject wanted, EStructuralFeature feature) {
        return wanted instanceof StatedFact stated && rows.containsKey(stated.getFact())
                && rows.get(stated.getFact()).get(0).setFocus();
    }
}
