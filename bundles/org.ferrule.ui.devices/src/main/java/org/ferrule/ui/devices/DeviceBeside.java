/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.ferrule.model.DeviceParts;
import org.ferrule.ui.devices.drawing.DeviceDrawing;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.devices.several.SeveralForm;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.look.ThemeChange;

/**
 * What stands beside the table: drawing and form of the one device that is selected, or the form of several. It is made
 * in a later turn of the display than the table, so that the window answers in between, or as soon as somebody needs it.
 */
final class DeviceBeside {

    private static final int DRAWING_SHARE = 36;

    private final EditContext context;
    private final EClass type;
    private final List<SheetColumn> columns;
    private final Composite stack;
    private Composite one;
    private TitleBar title;
    private DeviceDrawing drawing;
    private DeviceDetail detail;
    private SeveralForm several;
    private DeviceParts shown;

    /**
     * Creates it without content.
     *
     * @param type the class of devices, or of lines
     * @param columns what can be set for several
     */
    DeviceBeside(EditContext context, Composite parent, EClass type, List<SheetColumn> columns) {
        this.context = context;
        this.type = type;
        this.columns = columns;
        stack = new Composite(parent, SWT.NONE);
        context.toolkit().adapt(stack);
        stack.setLayout(new StackLayout());
        stack.getDisplay().asyncExec(() -> {
            if (!stack.isDisposed()) {
                make();
            }
        });
    }

    private void make() {
        if (one == null) {
            createOne();
            showOne();
            top(one);
        }
    }

    private void createOne() {
        one = context.toolkit().createComposite(stack);
        GridLayoutFactory.fillDefaults().spacing(0, 6).extendedMargins(6, 0, 0, 0).applyTo(one);
        title = new TitleBar(context, one);
        SashForm sash = new SashForm(one, SWT.VERTICAL);
        sash.setSashWidth(6);
        ThemeChange.ground(sash);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        drawing = new DeviceDrawing(context.session(), context.toolkit(), sash, title::say);
        detail = new DeviceDetail(context, sash, type);
        sash.setWeights(DRAWING_SHARE, 100 - DRAWING_SHARE);
        drawing.onSection(detail::openSection);
        detail.onSection(drawing::highlight);
    }

    /** Shows the one device that is selected; nothing for none or several. */
    void show(Optional<DeviceParts> device) {
        shown = device.orElse(null);
        if (one != null) {
            showOne();
        }
    }

    private void showOne() {
        Shown complete = shown == null ? null : Shown.of(shown);
        title.show(complete);
        drawing.show(shown);
        detail.show(complete);
    }

    /** Shows what several devices have in common, or goes back to the one if they are none. */
    void showSeveral(List<SheetRow> rows) {
        if (!rows.isEmpty()) {
            make();
            form().show(rows);
            top(several.control());
        } else if (one != null) {
            top(one);
        }
    }

    private SeveralForm form() {
        if (several == null) {
            several = new SeveralForm(context.session(), context.toolkit(), stack, columns);
        }
        return several;
    }

    private void top(Control shownNow) {
        StackLayout layout = (StackLayout) stack.getLayout();
        if (layout.topControl != shownNow) {
            layout.topControl = shownNow;
            stack.layout();
        }
    }

    /** Shows a part of the device that is selected. */
    boolean reveal(EObject object, EStructuralFeature feature) {
        make();
        return detail.reveal(object, feature);
    }

    /** Makes what is being typed for several part of the document. */
    void finishTyping() {
        if (several != null) {
            several.finishTyping();
        }
    }
}
