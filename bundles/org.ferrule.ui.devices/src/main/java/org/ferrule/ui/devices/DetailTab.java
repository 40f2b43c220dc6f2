/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.List;
import java.util.function.BiFunction;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.part.PartLayout;
import org.ferrule.ui.devices.part.PartView;
import org.ferrule.ui.devices.part.Shown;

/** One tab of a device's form: its content is made and filled when it is looked at first. */
final class DetailTab {

    private final EditContext context;
    private final String title;
    private final List<EReference> features;
    private final BiFunction<EditContext, Composite, PartView> maker;
    private final CTabItem item;
    private final ScrolledComposite scroller;
    private final Composite body;
    private PartView content;
    private Shown shown;
    private boolean stale = true;

    DetailTab(EditContext context, CTabFolder folder, String title, List<PartLayout> layouts,
            BiFunction<EditContext, Composite, PartView> maker) {
        this.title = title;
        this.features = layouts.stream().map(PartLayout::feature).toList();
        this.maker = maker;
        item = new CTabItem(folder, SWT.NONE);
        scroller = new ScrolledComposite(folder, SWT.V_SCROLL);
        context.toolkit().adapt(scroller);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.setShowFocusedControl(true);
        scroller.getVerticalBar().setIncrement(24);
        body = context.toolkit().createComposite(scroller);
        GridLayoutFactory.fillDefaults().margins(10, 10).spacing(0, 8).applyTo(body);
        scroller.setContent(body);
        scroller.addListener(SWT.Resize, event -> makeRoom());
        item.setControl(scroller);
        this.context = context.reflowing(this::makeRoom);
    }

    private void makeRoom() {
        int width = scroller.getClientArea().width;
        body.layout(true, true);
        scroller.setMinHeight(body.computeSize(width, SWT.DEFAULT).y);
    }

    /** Shows a device or a line, at once if the tab can be seen. */
    void show(Shown device) {
        shown = device;
        stale = true;
        int parts = device == null ? 0 : features.stream().mapToInt(feature -> device.parts(feature).size()).sum();
        item.setText(parts == 0 ? title : title + " (" + parts + ")");
        if (item.getParent().getSelection() == item) {
            update();
        }
    }

    /** Brings the content up to date. */
    void update() {
        if (content == null) {
            content = maker.apply(context, body);
        }
        if (stale) {
            stale = false;
            content.show(shown);
            makeRoom();
        }
    }

    /** Brings the tab to the top. */
    PartView open() {
        item.getParent().setSelection(item);
        update();
        return content;
    }

    boolean is(CTabItem other) {
        return item == other;
    }

    /** Tells whether the parts of the feature stand on this tab. */
    boolean shows(EStructuralFeature feature) {
        return features.contains(feature);
    }
}
