/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.events.IHyperlinkListener;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.DeviceResolution;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.look.Colours;

/** The row above the drawing: by which rules it is drawn, and the way to the line of the device. */
final class TitleBar {

    private final Label words;
    private final Hyperlink line;
    private EObject target;

    TitleBar(EditContext context, Composite parent) {
        Composite root = context.toolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(14, 0).applyTo(root);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(root);
        words = context.toolkit().createLabel(root, "");
        words.setForeground(Colours.muted());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(100, SWT.DEFAULT)
                .applyTo(words);
        line = context.toolkit().createHyperlink(root, "", SWT.NONE);
        line.addHyperlinkListener(IHyperlinkListener.linkActivatedAdapter(event -> context.goTo().accept(target)));
    }

    void say(String rules) {
        words.setText(rules.replace("&", "&&"));
        words.setToolTipText(rules);
    }

    void show(Shown device) {
        target = device == null || !(device.stater() instanceof Device own) ? null
                : DeviceResolution.line(own).orElse(null);
        line.setText(target == null ? "" : "Line: " + title((DeviceParts) target));
        line.setVisible(target != null);
        line.getParent().layout();
    }

    private static String title(DeviceParts parts) {
        return parts.getName() == null ? String.valueOf(parts.getId()) : parts.getName();
    }
}
