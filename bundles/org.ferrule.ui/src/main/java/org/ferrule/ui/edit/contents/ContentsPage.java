/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.contents;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ILabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Section;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.edit.order.ElementMoves;
import org.ferrule.ui.edit.order.Reordering;
import org.ferrule.ui.edit.order.RowDrag;
import org.ferrule.ui.look.WrapRow;

/** What a document holds, and the fields of what is chosen. */
public final class ContentsPage extends DocumentPage {

    private static final int LEAST_WIDTH = 600;
    private static final int LEAST_HEIGHT = 200;

    private final ILabelProvider labels;
    private TreeViewer tree;
    private ElementDetails details;
    private ElementMoves moves;
    private Button add;
    private Button remove;
    private Button up;
    private Button down;
    private Chosen shown;

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
        tree = new TreeViewer(toolkit.createTree(client, SWT.BORDER | SWT.MULTI));
        GridDataFactory.fillDefaults().grab(true, true).hint(220, 300).applyTo(tree.getControl());
        tree.setContentProvider(new ContentsTree());
        tree.setLabelProvider(labels);
        tree.setInput(session());
        tree.expandToLevel(2);
        tree.addSelectionChangedListener(event -> selected());
        createMoves(tree.getTree());
        Composite buttons = new WrapRow(client, 5).control();
        add = button(toolkit, buttons, "Add", this::addToGroup);
        remove = button(toolkit, buttons, "Remove", this::removeSelected);
        up = button(toolkit, buttons, "Up", () -> moves.step(-1));
        down = button(toolkit, buttons, "Down", () -> moves.step(1));
    }

    private void createMoves(Tree widget) {
        moves = new ElementMoves(session(), () -> chosen().members());
        widget.addListener(SWT.KeyDown, moves::press);
        RowDrag.in(widget, moves::isMovable, this::isBeside, (row, after) -> moves
                .moveBefore(Reordering.siblings((EObject) row.getData()).indexOf(row.getData()) + (after ? 1 : 0)));
    }

    /** Elements go from place to place in their own group. */
    private boolean isBeside(Item row) {
        return row != null && row.getData() instanceof EObject element && element.eContainer() != null
                && chosen().group().equals(new Chosen(List.of(element)).group());
    }

    private static Button button(FormToolkit toolkit, Composite parent, String text, Runnable action) {
        Button button = toolkit.createButton(parent, text, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        button.setLayoutData(new RowData(72, SWT.DEFAULT));
        return button;
    }

    private Chosen chosen() {
        return Chosen.of(tree.getStructuredSelection());
    }

    private void selected() {
        showChosen();
        if (!shown.isGroup()) {
            ((DocumentEditor) getEditor()).selection().select(shown.element().orElse(null));
        }
        updateButtons();
    }

    private void showChosen() {
        shown = chosen();
        if (shown.element().isEmpty() && shown.group().isPresent()) {
            details.show(shown.group().orElseThrow(), shown.compared());
        } else {
            details.show(shown.element().orElse(null));
        }
    }

    private void updateButtons() {
        add.setEnabled(session().editable() && chosen().group().isPresent());
        remove.setEnabled(session().editable() && !chosen().members().isEmpty());
        up.setEnabled(moves.canStep(-1));
        down.setEnabled(moves.canStep(1));
    }

    /** What is added goes to the chosen group, or to that of the chosen elements. */
    private void addToGroup() {
        Group group = chosen().group().orElseThrow();
        EObject made = ElementDetails.complete(EcoreUtil.create(group.reference().getEReferenceType()));
        session().execute(AddCommand.create(session().domain(), group.holder(), group.reference(), made));
        tree.refresh();
        tree.setSelection(new StructuredSelection(made), true);
    }

    private void removeSelected() {
        session().execute(DeleteCommand.create(session().domain(), chosen().members()));
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
        if (!chosen().equals(shown) || shown.element().isEmpty()) {
            showChosen();
        }
        updateButtons();
    }

    @Override
    public void setFocus() {
        tree.getControl().setFocus();
    }
}
