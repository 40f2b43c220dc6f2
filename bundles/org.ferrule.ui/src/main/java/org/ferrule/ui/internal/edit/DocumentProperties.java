/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.SessionListener;

/** The Properties view beside an editor of documents: the attributes of what is selected there. */
public final class DocumentProperties extends PropertySheetPage implements SessionListener {

    private final DocumentSession session;

    /** Creates the page for a session's document. */
    public DocumentProperties(DocumentSession session) {
        this.session = session;
        setPropertySourceProvider(element -> element instanceof EObject object ? new ElementProperties(session, object)
                : null);
    }

    @Override
    public void createControl(Composite parent) {
        super.createControl(parent);
        session.addListener(this);
    }

    @Override
    public void documentChanged(DocumentChange change) {
        if (getControl() != null && !getControl().isDisposed()) {
            refresh();
        }
    }

    @Override
    public void dispose() {
        session.removeListener(this);
        super.dispose();
    }
}
