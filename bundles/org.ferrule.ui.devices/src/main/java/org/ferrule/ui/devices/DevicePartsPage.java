/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.DocumentPage;

/** The page of all devices, or of all lines: the table, and beside it what is selected. */
final class DevicePartsPage extends DocumentPage {

    private static final int TABLE_SHARE = 52;

    private final EReference feature;
    private DeviceTable table;
    private DeviceBeside beside;

    /**
     * Creates the page.
     *
     * @param feature the devices or the lines of a library
     */
    DevicePartsPage(DocumentEditor editor, String title, EReference feature) {
        super(editor, feature.getName(), title);
        this.feature = feature;
    }

    @Override
    protected void fill(IManagedForm form) {
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(8, 8).applyTo(body);
        SashForm sash = new SashForm(body, SWT.HORIZONTAL);
        sash.setSashWidth(6);
        form.getToolkit().adapt(sash);
        GridDataFactory.fillDefaults().grab(true, true).hint(600, 300).applyTo(sash);
        EditContext context = new EditContext(session(), form.getToolkit(), () -> {
        }, this::goTo, getSite());
        table = new DeviceTable(context, sash, feature);
        beside = new DeviceBeside(context, sash, (EClass) feature.getEType(), table.columns());
        sash.setWeights(TABLE_SHARE, 100 - TABLE_SHARE);
        table.onSelect(beside::show);
        table.onSeveral(beside::showSeveral);
        table.fill();
    }

    private void goTo(EObject object) {
        ((DocumentEditor) getEditor()).reveal(object, null);
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature wanted) {
        EObject whole = object;
        while (whole.eContainer() != null && whole.eContainer().eContainer() != null) {
            whole = whole.eContainer();
        }
        return table != null && whole.eContainer() != null && table.reveal(whole) && beside.reveal(object, wanted);
    }

    @Override
    public void documentChanged(DocumentChange change) {
        super.documentChanged(change);
        if (!session().broken()) {
            table.documentChanged(change);
        }
    }

    @Override
    public void aboutToSave() {
        table.finishTyping();
        beside.finishTyping();
    }

    @Override
    public void problemsChanged() {
        table.problemsChanged();
    }

    @Override
    public void setFocus() {
        if (table != null) {
            table.focus();
        }
    }
}
