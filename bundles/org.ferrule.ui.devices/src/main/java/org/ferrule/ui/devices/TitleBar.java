/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import org.eclipse.emf.ecore.EObject;
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
import org.ferrule.ui.look.ThemeChange;
import org.ferrule.ui.look.WrapRow;

/** The row above the drawing: by which rules it is drawn, and the way to the line of the device. */
final class TitleBar {

    private static final int SPACING = 14;

    private final WrapRow row;
    private final Label words;
    private final Hyperlink line;
    private EObject target;

    TitleBar(EditContext context, Composite parent) {
        row = new WrapRow(parent, SPACING);
        words = context.toolkit().createLabel(row.control(), "");
        ThemeChange.text(words, Colours::muted);
        line = context.toolkit().createHyperlink(row.control(), "", SWT.NONE);
        ThemeChange.text(line, Colours::link);
        line.addHyperlinkListener(IHyperlinkListener.linkActivatedAdapter(event -> context.goTo().accept(target)));
    }

    void say(String rules) {
        words.setText(rules.replace("&", "&&"));
        words.setToolTipText(rules);
        row.refresh();
    }

    void show(Shown device) {
        target = device == null || !(device.stater() instanceof Device own) ? null
                : DeviceResolution.line(own).orElse(null);
        line.setText(target == null ? "" : "Line: " + title((DeviceParts) target));
        line.setVisible(target != null);
        row.refresh();
    }

    private static String title(DeviceParts parts) {
        return parts.getName() == null ? String.valueOf(parts.getId()) : parts.getName();
    }
}
