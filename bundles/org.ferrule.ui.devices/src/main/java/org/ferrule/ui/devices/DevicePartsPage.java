/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.model.DeviceParts;
import org.ferrule.ui.devices.drawing.DeviceDrawing;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.devices.several.SeveralForm;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.DocumentPage;

/** The page of all devices, or of all lines: the table, and beside it drawing and form of the one that is selected. */
final class DevicePartsPage extends DocumentPage {

    private static final int TABLE_SHARE = 52;
    private static final int DRAWING_SHARE = 36;

    private final EReference feature;
    private DeviceTable table;
    private DeviceDrawing drawing;
    private DeviceDetail detail;
    private TitleBar title;
    private DeviceParts shown;
    private Composite stack;
    private Composite right;
    private SeveralForm several;

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
        createDetails(context, sash);
        sash.setWeights(TABLE_SHARE, 100 - TABLE_SHARE);
        table.onSelect(this::show);
        table.onSeveral(this::showSeveral);
        table.fill();
    }

    private void createDetails(EditContext context, Composite parent) {
        stack = new Composite(parent, SWT.NONE);
        stack.setLayout(new StackLayout());
        right = context.toolkit().createComposite(stack);
        several = new SeveralForm(session(), context.toolkit(), stack, table.columns());
        top(right);
        GridLayoutFactory.fillDefaults().spacing(0, 6).extendedMargins(6, 0, 0, 0).applyTo(right);
        title = new TitleBar(context, right);
        SashForm sash = new SashForm(right, SWT.VERTICAL);
        sash.setSashWidth(6);
        context.toolkit().adapt(sash);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        drawing = new DeviceDrawing(session(), context.toolkit(), sash, title::say);
        detail = new DeviceDetail(context, sash, (EClass) feature.getEType());
        sash.setWeights(DRAWING_SHARE, 100 - DRAWING_SHARE);
        drawing.onSection(detail::openSection);
        detail.onSection(drawing::highlight);
    }

    private void showSeveral(List<SheetRow> rows) {
        if (!rows.isEmpty()) {
            several.show(rows);
        }
        top(rows.isEmpty() ? right : several.control());
    }

    private void top(Composite shownNow) {
        StackLayout layout = (StackLayout) stack.getLayout();
        if (layout.topControl != shownNow) {
            layout.topControl = shownNow;
            stack.layout();
        }
    }

    private void goTo(EObject object) {
        ((DocumentEditor) getEditor()).reveal(object, null);
    }

    private void show(Optional<DeviceParts> device) {
        shown = device.orElse(null);
        Shown complete = device.map(Shown::of).orElse(null);
        title.show(complete);
        drawing.show(shown);
        detail.show(complete);
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature wanted) {
        EObject whole = object;
        while (whole.eContainer() != null && whole.eContainer().eContainer() != null) {
            whole = whole.eContainer();
        }
        return table != null && whole.eContainer() != null && table.reveal(whole) && detail.reveal(object, wanted);
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
        several.finishTyping();
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
