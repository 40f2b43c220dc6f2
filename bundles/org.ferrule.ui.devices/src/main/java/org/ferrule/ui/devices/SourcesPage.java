/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.part.PartForm;
import org.ferrule.ui.devices.part.PartLayout;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.edit.DocumentEditor;

/** The page of the document as a whole: its title, revision and date, and below them its sources. */
final class SourcesPage extends PartsPage {

    private PartForm head;

    SourcesPage(DocumentEditor editor) {
        super(editor, "Sources", PartLayout.SOURCES);
    }

    @Override
    protected void fill(IManagedForm form) {
        EditContext context = new EditContext(session(), form.getToolkit(), () -> form.reflow(true), object -> {
        },
                getSite());
        head = new PartForm(context, form.getForm().getBody(), document().eClass(), List.of());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head.control());
        super.fill(form);
    }

    @Override
    void refresh() {
        head.show(Shown.of(document()));
        super.refresh();
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        return head != null && object == document() && head.reveal(object, feature) || super.reveal(object, feature);
    }
}
