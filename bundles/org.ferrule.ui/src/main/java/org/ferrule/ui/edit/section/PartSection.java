/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Section;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.field.FieldForm;

/**
 * A section for a document itself, or for one of its parts. A part that the document may leave out can be stated and left
 * out again.
 */
public final class PartSection {

    private static final int PICK_ROW = 200;

    private final DocumentSession session;
    private final EReference part;
    private final FormToolkit toolkit;
    private final Composite client;
    private final FieldForm form;
    private final List<PartBlock> blocks = new ArrayList<>();
    private final List<Button> picks = new ArrayList<>();
    private Composite pickRow;
    private Button stating;

    /**
     * Creates a section.
     *
     * @param part the part, or null for the document itself
     * @param fields adds the fields
     */
    public PartSection(DocumentSession session, IManagedForm managed, Composite parent, String title, EReference part,
            Consumer<FieldForm> fields) {
        this.session = session;
        this.part = part;
        this.toolkit = managed.getToolkit();
        Section section = toolkit.createSection(parent, ExpandableComposite.TITLE_BAR);
        section.setText(title);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(section);
        client = toolkit.createComposite(section);
        GridLayoutFactory.fillDefaults().margins(0, 2).applyTo(client);
        Composite grid = toolkit.createComposite(client);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
        form = new FieldForm(session, toolkit, grid);
        fields.accept(form);
        ((GridData) grid.getLayoutData()).exclude = grid.getChildren().length == 0;
        form.onReflow(() -> Reflow.around(managed, grid));
        addStating(section);
        section.setClient(client);
    }

    /** Where nothing can be stated the button is not seen; it gives heads that stand side by side the same height. */
    private void addStating(Section section) {
        stating = toolkit.createButton(section, "", SWT.PUSH);
        stating.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> state()));
        section.setTextClient(stating);
    }

    private void state() {
        session.document().ifPresent(document -> session.set(document, part,
                object() == null ? EcoreUtil.create(part.getEReferenceType()) : null));
    }

    /** Returns where lists are added below the fields. */
    public Composite client() {
        return client;
    }

    /** Adds what is shown below the fields. */
    public void add(PartBlock block) {
        blocks.add(block);
    }

    /** Adds a button that lets the value of a feature be picked. */
    public void addPicking(String label, EAttribute feature, Supplier<List<String>> picking) {
        Button button = toolkit.createButton(pickRow(), label, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> Optional.ofNullable(object())
                .ifPresent(object -> picking.get().forEach(picked -> session.set(object, feature, picked)))));
        picks.add(button);
    }

    /** Buttons that pick stand side by side, and below each other only where there is no room. */
    private Composite pickRow() {
        if (pickRow == null) {
            pickRow = toolkit.createComposite(client);
            RowLayoutFactory.fillDefaults().wrap(true).spacing(6).applyTo(pickRow);
            GridDataFactory.fillDefaults().grab(true, false).hint(PICK_ROW, SWT.DEFAULT).applyTo(pickRow);
        }
        return pickRow;
    }

    /** Returns the object that is shown, or null. */
    private EObject object() {
        return session.document().map(d -> part == null ? d : (EObject) d.eGet(part)).orElse(null);
    }

    /** Shows what the document says now. */
    public void refresh() {
        EObject shown = object();
        if (form.object() != shown) {
            form.show(shown);
        } else {
            form.refreshMeanings();
        }
        blocks.forEach(block -> block.show(shown));
        picks.forEach(button -> button.setEnabled(shown != null && session.editable()));
        stating.setText(shown == null ? "Fill in" : "Leave out");
        stating.setVisible(part != null && (shown == null || !part.isRequired()));
        stating.setEnabled(session.editable());
        stating.getParent().layout();
    }

    /** Puts the cursor where a feature of an object stands, if that is here. */
    public boolean reveal(EObject wanted, EStructuralFeature feature) {
        return form.reveal(wanted, feature) || blocks.stream().anyMatch(block -> block.reveal(wanted, feature))
                || wanted == object() && part != null && client.setFocus();
    }
}
