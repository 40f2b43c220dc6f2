/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.rules;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Section;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.internal.rules.RuleTree.Group;

/** What the rule set holds, and the fields of what is chosen. */
final class RulesPage extends DocumentPage {

    private TreeViewer tree;
    private ElementDetails details;
    private Button add;
    private Button remove;

    RulesPage(RuleSetEditor editor) {
        super(editor, "rules", "Rules");
    }

    @Override
    protected void fill(IManagedForm form) {
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(10, 8).applyTo(body);
        SashForm sash = new SashForm(body, SWT.HORIZONTAL);
        form.getToolkit().adapt(sash);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
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
        GridLayoutFactory.fillDefaults().numColumns(2).margins(2, 4).applyTo(client);
        section.setClient(client);
        tree = new TreeViewer(toolkit.createTree(client, SWT.BORDER | SWT.SINGLE));
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(220, 300).applyTo(tree.getControl());
        RuleTree content = new RuleTree();
        tree.setContentProvider(content);
        tree.setLabelProvider(new RuleLabels(session().adapters()));
        tree.setInput(session());
        tree.expandToLevel(2);
        tree.addSelectionChangedListener(event -> selected(event.getStructuredSelection()));
        add = button(toolkit, client, "Add", this::addToGroup);
        remove = button(toolkit, client, "Remove", this::removeSelected);
    }

    private static Button button(FormToolkit toolkit, Composite parent, String text, Runnable action) {
        Button button = toolkit.createButton(parent, text, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        GridDataFactory.swtDefaults().hint(90, SWT.DEFAULT).applyTo(button);
        return button;
    }

    private void selected(IStructuredSelection selection) {
        Object chosen = selection.getFirstElement();
        if (chosen instanceof Group group) {
            details.show(group);
        } else {
            details.show(chosen instanceof EObject object ? object : null);
        }
        updateButtons();
    }

    private void updateButtons() {
        add.setEnabled(session().editable() && group().isPresent());
        remove.setEnabled(session().editable() && chosen().filter(o -> o.eContainer() != null).isPresent());
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

    private void addToGroup() {
        EReference reference = group().orElseThrow();
        EObject made = EcoreUtil.create(reference.getEReferenceType());
        session().execute(
                AddCommand.create(session().domain(), session().document().orElseThrow(), reference, made));
        tree.refresh();
        tree.setSelection(new StructuredSelection(made), true);
    }

    private void removeSelected() {
        EObject removed = chosen().orElseThrow();
        session().execute(DeleteCommand.create(session().domain(), removed));
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        tree.setSelection(new StructuredSelection(object), true);
        return chosen().filter(shown -> shown == object).isPresent()
                && (feature == null || details.reveal(object, feature));
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
