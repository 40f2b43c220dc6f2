/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.forms.IFormColors;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.ui.document.DocumentSession;

/** A list of texts that stands in a feature: added by a dialog, removed, put in order. */
public final class TextListBlock implements PartBlock {

    private static final int HEIGHT = 84;

    private final DocumentSession session;
    private final EAttribute feature;
    private final UnaryOperator<List<String>> adding;
    private final UnaryOperator<String> words;
    private final Table table;
    private final List<Button> buttons = new ArrayList<>();
    private EObject object;

    /**
     * Creates a list.
     *
     * @param adding gets the texts that are there, and returns those that the user wants to add
     */
    public TextListBlock(DocumentSession session, FormToolkit toolkit, Composite parent, String label,
            EAttribute feature, UnaryOperator<List<String>> adding) {
        this(session, toolkit, parent, label, feature, adding, UnaryOperator.identity());
    }

    /**
     * Creates a list that shows other words for its texts.
     *
     * @param adding gets the texts that are there, and returns those that the user wants to add
     * @param words what is shown for a text, such as an id with its name
     */
    public TextListBlock(DocumentSession session, FormToolkit toolkit, Composite parent, String label,
            EAttribute feature, UnaryOperator<List<String>> adding, UnaryOperator<String> words) {
        this.session = session;
        this.feature = feature;
        this.adding = adding;
        this.words = words;
        Composite block = toolkit.createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(block);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(1, 3).applyTo(block);
        if (!label.isEmpty()) {
            Label heading = toolkit.createLabel(block, label);
            heading.setForeground(toolkit.getColors().getColor(IFormColors.TITLE));
            GridDataFactory.fillDefaults().span(2, 1).applyTo(heading);
        }
        table = toolkit.createTable(block, SWT.MULTI | SWT.BORDER | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(150, HEIGHT).applyTo(table);
        addButtons(toolkit, block);
    }

    private void addButtons(FormToolkit toolkit, Composite block) {
        Composite column = toolkit.createComposite(block);
        GridDataFactory.fillDefaults().applyTo(column);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(column);
        button(toolkit, column, "Add...", this::add);
        button(toolkit, column, "Remove", this::remove);
        button(toolkit, column, "Up", () -> move(-1));
        button(toolkit, column, "Down", () -> move(1));
    }

    private void button(FormToolkit toolkit, Composite column, String text, Runnable work) {
        Button button = toolkit.createButton(column, text, SWT.PUSH);
        GridDataFactory.fillDefaults().applyTo(button);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        buttons.add(button);
    }

    @Override
    public void show(EObject shown) {
        object = shown;
        List<String> texts = texts().stream().map(words).toList();
        if (!texts.equals(List.of(table.getItems()).stream().map(TableItem::getText).toList())) {
            int[] selected = table.getSelectionIndices();
            table.removeAll();
            texts.forEach(text -> new TableItem(table, SWT.NONE).setText(text));
            table.select(selected);
        }
        buttons.forEach(button -> button.setEnabled(object != null && session.editable()));
    }

    private List<String> texts() {
        return object == null ? List.of()
                : ((List<?>) object.eGet(feature)).stream().map(String.class::cast).toList();
    }

    private void add() {
        List<String> texts = new ArrayList<>(texts());
        texts.addAll(adding.apply(texts()));
        set(texts);
    }

    private void remove() {
        List<String> texts = new ArrayList<>(texts());
        int[] selected = table.getSelectionIndices();
        for (int i = selected.length - 1; i >= 0; i--) {
            texts.remove(selected[i]);
        }
        set(texts);
    }

    private void move(int step) {
        int from = table.getSelectionIndex();
        int to = from + step;
        if (from >= 0 && to >= 0 && to < texts().size()) {
            List<String> texts = new ArrayList<>(texts());
            Collections.swap(texts, from, to);
            set(texts);
            table.setSelection(to);
        }
    }

    private void set(List<String> texts) {
        if (!texts.equals(texts())) {
            session.set(object, feature, texts);
            show(object);
        }
    }

    @Override
    public boolean reveal(EObject wanted, EStructuralFeature wantedFeature) {
        return Optional.ofNullable(object).filter(wanted::equals).isPresent() && feature == wantedFeature
                && table.setFocus();
    }
}
