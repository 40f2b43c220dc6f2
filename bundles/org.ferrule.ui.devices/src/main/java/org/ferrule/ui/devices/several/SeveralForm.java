/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.several;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** The fields of several devices at once: what is typed is stated for all of them, by one command. */
public final class SeveralForm {

    private final ScrolledComposite scroller;
    private final Composite body;
    private final Label title;
    private final List<SeveralField> fields = new ArrayList<>();

    /**
     * Creates a form that shows nothing yet.
     *
     * @param columns those of the table; each that can be edited gets a field, but ids, which differ
     */
    public SeveralForm(DocumentSession session, FormToolkit toolkit, Composite parent, List<SheetColumn> columns) {
        scroller = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.BORDER);
        toolkit.adapt(scroller);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        body = toolkit.createComposite(scroller);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(12, 10).spacing(10, 6).applyTo(body);
        scroller.setContent(body);
        scroller.addListener(SWT.Resize, event -> makeRoom());
        title = toolkit.createLabel(body, "");
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().span(2, 1).applyTo(title);
        Label hint = toolkit.createLabel(body,
                "What you type here is stated for all of them; one undo takes it back.", SWT.WRAP);
        ThemeChange.text(hint, Colours::muted);
        GridDataFactory.fillDefaults().span(2, 1).hint(200, SWT.DEFAULT).grab(true, false).applyTo(hint);
        columns.stream().filter(column -> column.attribute().filter(f -> f != Literals.DEVICE_PARTS__ID).isPresent())
                .forEach(column -> fields.add(new SeveralField(session, toolkit, body, column, this::makeRoom)));
    }

    private void makeRoom() {
        int width = scroller.getClientArea().width;
        body.layout(true, true);
        scroller.setMinHeight(body.computeSize(width, SWT.DEFAULT).y);
    }

    /** Shows what the rows have in common. */
    public void show(List<SheetRow> rows) {
        title.setText(rows.size() + " selected");
        fields.forEach(field -> field.show(rows));
        makeRoom();
    }

    /** Takes over what is being typed. */
    public void finishTyping() {
        fields.forEach(SeveralField::commit);
    }

    /** Returns the control to lay out. */
    public Composite control() {
        return scroller;
    }
}
