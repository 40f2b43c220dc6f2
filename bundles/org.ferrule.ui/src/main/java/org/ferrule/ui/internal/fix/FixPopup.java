/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.fix;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.ferrule.quantity.DimensionRepair;

/** A list of repairs below a field: arrows choose, Enter takes, Escape closes. */
final class FixPopup extends PopupDialog {

    private static final String NONE = "There is no safe fix for this text.";

    private final Control field;
    private final List<DimensionRepair> repairs;
    private final Consumer<DimensionRepair> chosen;
    private org.eclipse.swt.widgets.List list;

    FixPopup(Control field, List<DimensionRepair> repairs, Consumer<DimensionRepair> chosen) {
        super(field.getShell(), SWT.TOOL | SWT.ON_TOP, true, false, false, false, false, null, null);
        this.field = field;
        this.repairs = repairs;
        this.chosen = chosen;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        list = new org.eclipse.swt.widgets.List(parent, SWT.SINGLE | SWT.V_SCROLL);
        repairs.forEach(repair -> list.add(RepairWords.label(repair)));
        if (repairs.isEmpty()) {
            list.add(NONE);
        }
        list.select(0);
        list.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> take()));
        list.addListener(SWT.MouseUp, event -> take());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(list);
        return list;
    }

    @Override
    protected Control getFocusControl() {
        return list;
    }

    @Override
    protected Point getInitialLocation(Point size) {
        return field.toDisplay(0, field.getSize().y);
    }

    private void take() {
        int index = list.getSelectionIndex();
        close();
        if (index >= 0 && index < repairs.size()) {
            chosen.accept(repairs.get(index));
        }
        field.setFocus();
    }
}
