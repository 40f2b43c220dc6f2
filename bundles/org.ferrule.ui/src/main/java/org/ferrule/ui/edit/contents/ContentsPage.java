/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.contents;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ILabelProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Section;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.look.WrapRow;

/** What a document holds, and the fields of what is chosen. */
public final class ContentsPage extends DocumentPage {

    private static final int LEAST_WIDTH = 600;
    private static final int LEAST_HEIGHT = 200;

    private final ILabelProvider labels;
    private final List<Button> moves = new ArrayList<>();
    private TreeViewer tree;
    private ElementDetails details;
    private Button add;
    private Button remove;

    /**
     * Creates the page.
     *
     * @param editor the editor that it belongs to
     * @param id the id, unique within the editor
     * @param title what stands on the tab
     * @param labels words and images for elements and their groups
     */
    public ContentsPage(DocumentEditor editor, String id, String title, ILabelProvider labels) {
        super(editor, id, title);
        this.labels = labels;
    }

    @Override
    protected void fill(IManagedForm form) {
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(10, 8).applyTo(body);
        SashForm sash = new SashForm(body, SWT.HORIZONTAL);
        form.getToolkit().adapt(sash);
        // without hints a long text in a field would make the page wider than the window
        GridDataFactory.fillDefaults().grab(true, true).hint(LEAST_WIDTH, LEAST_HEIGHT).applyTo(sash);
        createTree(form.getToolkit(), sash);
        details = new ElementDetails(session(), form, sash,
                opened -> tree.setSelection(new StructuredSelection(opened), true));
        sash.setWeights(38, 62);
        tree.setSelection(new StructuredSelection(session().document().orElseThrow()));
    }

    private void createTree(FormToolkit toolkit, Composite parent) {
        Section section = toolkit.createSection(parent, ExpandableComposite.TITLE_BAR);
        section.setText("Contents");
        Composite client = toolkit.createComposite(section);
        GridLayoutFactory.fillDefaults().margins(2, 4).applyTo(client);
        section.setClient(client);
        tree = new TreeViewer(toolkit.createTree(client, SWT.BORDER | SWT.SINGLE));
        GridDataFactory.fillDefaults().grab(true, true).hint(220, 300).applyTo(tree.getControl());
        tree.setContentProvider(new ContentsTree());
        tree.setLabelProvider(labels);
        tree.setInput(session());
        tree.expandToLevel(2);
        tree.addSelectionChangedListener(event -> selected(event.getStructuredSelection()));
        Composite buttons = new WrapRow(client, 5).control();
        add = button(toolkit, buttons, "Add", this::addToGroup);
        remove = button(toolkit, buttons, "Remove", this::removeSelected);
        moves.add(button(toolkit, buttons, "Up", () -> move(-1)));
        moves.add(button(toolkit, buttons, "Down", () -> move(1)));
    }

    private static Button button(FormToolkit toolkit, Composite parent, String text, Runnable action) {
        Button button = toolkit.createButton(parent, text, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        button.setLayoutData(new RowData(72, SWT.DEFAULT));
        return button;
    }

    private void selected(IStructuredSelection selection) {
        Object chosen = selection.getFirstElement();
        if (chosen instanceof Group group) {
            details.show(group);
        } else {
            details.show(chosen instanceof EObject object ? object : null);
            ((DocumentEditor) getEditor()).selection().select(chosen instanceof EObject object ? object : null);
        }
        updateButtons();
    }

    private void updateButtons() {
        add.setEnabled(session().editable() && group().isPresent());
        boolean member = session().editable() && chosen().filter(o -> o.eContainer() != null).isPresent();
        remove.setEnabled(member);
        moves.forEach(button -> button.setEnabled(member && group().filter(EReference::isMany).isPresent()));
    }

    private Optional<EObject> chosen() {
        return tree.getStructuredSelection().getFirstElement() instanceof EObject object ? Optional.of(object)
                : Optional.empty();
    }

    /** What is added goes to the chosen group, or to that of the chosen rule. */
    private Optional<EReference> group() {
        Object chosen = tree.getStructuredSelection().getFirstElement();
        return chosen instanceof Group group ? Optional.of(group.reference())
                : chosen().filter(object -> object.eContainer() != null).map(EObject::eContainmentFeature);
    }

    /** Returns what holds the group. */
    private EObject holder() {
        Object chosen = tree.getStructuredSelection().getFirstElement();
        return chosen instanceof Group group ? group.holder() : ((EObject) chosen).eContainer();
    }

    private void addToGroup() {
        EReference reference = group().orElseThrow();
        EObject made = ElementDetails.complete(EcoreUtil.create(reference.getEReferenceType()));
        session().execute(AddCommand.create(session().domain(), holder(), reference, made));
        tree.refresh();
        tree.setSelection(new StructuredSelection(made), true);
    }

    private void removeSelected() {
        EObject removed = chosen().orElseThrow();
        session().execute(DeleteCommand.create(session().domain(), removed));
    }

    private void move(int step) {
        EObject moved = chosen().orElseThrow();
        List<?> members = new Group(moved.eContainer(), moved.eContainmentFeature()).members();
        int place = members.indexOf(moved) + step;
        if (place >= 0 && place < members.size()) {
            session().execute(MoveCommand.create(session().domain(), moved.eContainer(), moved.eContainmentFeature(),
                    moved, place));
        }
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        boolean part = object.eContainmentFeature() != null && !object.eContainmentFeature().isMany();
        EObject wanted = part ? object.eContainer() : object;
        if (feature instanceof EReference group && group.isMany() && !part) {
            return select(new Group(object, group));
        }
        return select(wanted) && (feature == null || details.reveal(object, feature));
    }

    private boolean select(Object wanted) {
        tree.setSelection(new StructuredSelection(wanted), true);
        return wanted.equals(tree.getStructuredSelection().getFirstElement());
    }

    @Override
    public void documentChanged(DocumentChange change) {
        super.documentChanged(change);
        if (!tree.getControl().isDisposed()) {
            tree.refresh();
            keepSelection(change);
        }
    }

    /** What was chosen may be gone: by undo, by removal, or because the file was read anew. */
    private void keepSelection(DocumentChange change) {
        if (change.reloaded() || tree.getStructuredSelection().isEmpty()) {
            tree.setSelection(new StructuredSelection(session().document().orElseThrow()));
        }
        if (tree.getStructuredSelection().getFirstElement() instanceof Group group) {
            details.show(group);
        }
        updateButtons();
    }

    @Override
    public void setFocus() {
        tree.getControl().setFocus();
    }
}
