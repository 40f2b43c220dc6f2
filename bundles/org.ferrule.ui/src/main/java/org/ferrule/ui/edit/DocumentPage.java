/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.editor.FormPage;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.SessionListener;

/**
 * A page of a {@link DocumentEditor}. Its head shows the title and, beside it, what the user has to know about the
 * document as a whole: that it cannot be changed, or that saving will put it in order.
 */
public abstract class DocumentPage extends FormPage implements RevealTarget, SessionListener {

    /**
     * Creates a page.
     *
     * @param editor the editor that it belongs to
     * @param id the id, unique within the editor
     * @param title what stands on the tab
     */
    protected DocumentPage(DocumentEditor editor, String id, String title) {
        super(editor, id, title);
    }

    /** Returns the session of the document. */
    protected final DocumentSession session() {
        return ((DocumentEditor) getEditor()).session();
    }

    @Override
    protected final void createFormContent(IManagedForm managedForm) {
        FormToolkit toolkit = managedForm.getToolkit();
        toolkit.decorateFormHeading(managedForm.getForm().getForm());
        managedForm.getForm().setText(heading());
        fill(managedForm);
        session().addListener(this);
        managedForm.getForm().addDisposeListener(event -> forget());
        showNotice();
    }

    private void forget() {
        DocumentSession session = session();
        if (session != null) {
            session.removeListener(this);
        }
    }

    /** Returns what stands in the head of the page. */
    protected String heading() {
        return session().document().map(document -> document.getTitle()).orElse(session().file().getName());
    }

    /** Creates the content below the head. */
    protected abstract void fill(IManagedForm form);

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        return false;
    }

    @Override
    public void documentChanged(DocumentChange change) {
        String heading = heading();
        ScrolledForm form = getManagedForm().getForm();
        if (!form.isDisposed() && heading != null && !heading.equals(form.getText())) {
            form.setText(heading);
        }
    }

    @Override
    public void stateChanged() {
        showNotice();
    }

    private void showNotice() {
        ScrolledForm form = getManagedForm().getForm();
        if (form.isDisposed()) {
            return;
        }
        if (session().readOnly()) {
            form.setMessage("Read-only: written by a newer version of the program", IMessageProvider.WARNING);
        } else if (session().frozen().isPresent()) {
            form.setMessage(session().frozen().get(), IMessageProvider.INFORMATION);
        } else if (session().dirty() && session().willBeReordered()) {
            form.setMessage("Saving will also put the keys of this document in order", IMessageProvider.INFORMATION);
        } else {
            form.setMessage(null, IMessageProvider.NONE);
        }
    }
}
