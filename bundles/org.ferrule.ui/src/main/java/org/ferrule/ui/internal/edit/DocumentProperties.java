/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPropertyListener;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.SessionListener;
import org.ferrule.ui.edit.DocumentEditor;

/** The Properties view beside an editor of documents: the attributes of what is selected there. */
public final class DocumentProperties extends PropertySheetPage implements SessionListener {

    private final IPropertyListener mover = (source, property) -> moved(property);
    private final DocumentEditor editor;
    private DocumentSession session;

    /** Creates the page for what an editor shows. */
    public DocumentProperties(DocumentEditor editor) {
        this.editor = editor;
        setPropertySourceProvider(element -> element instanceof EObject object && editor.session() != null
                ? new ElementProperties(editor.session(), object) : null);
    }

    @Override
    public void createControl(Composite parent) {
        super.createControl(parent);
        editor.addPropertyListener(mover);
        followDocument();
    }

    private void followDocument() {
        session = editor.session();
        session.addListener(this);
    }

    /** After "Save As" the editor shows another file. */
    private void moved(int property) {
        if (property == IEditorPart.PROP_INPUT && editor.session() != null) {
            session.removeListener(this);
            followDocument();
        }
    }

    @Override
    public void documentChanged(DocumentChange change) {
        if (getControl() != null && !getControl().isDisposed()) {
            refresh();
        }
    }

    @Override
    public void dispose() {
        if (session != null) {
            session.removeListener(this);
        }
        editor.removePropertyListener(mover);
        super.dispose();
    }
}
