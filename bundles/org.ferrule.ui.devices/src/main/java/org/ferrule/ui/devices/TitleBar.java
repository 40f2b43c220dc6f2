/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

/** What sort of device is shown, whose it is and which size, and the way to its line. The drawing names it. */
final class TitleBar {

    private static final String BETWEEN = "  \u00b7  ";

    private final Label traits;
    private final Hyperlink line;
    private EObject target;

    TitleBar(EditContext context, Composite parent) {
        Composite root = context.toolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(14, 0).applyTo(root);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(root);
        traits = context.toolkit().createLabel(root, "");
        traits.setForeground(Colours.muted());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(100, SWT.DEFAULT)
                .applyTo(traits);
        line = context.toolkit().createHyperlink(root, "", SWT.NONE);
        line.addHyperlinkListener(IHyperlinkListener.linkActivatedAdapter(event -> context.goTo().accept(target)));
    }

    void show(Shown device) {
        DeviceParts parts = device == null ? null : (DeviceParts) device.complete();
        traits.setText(parts == null ? "" : traits(parts).replace("&", "&&"));
        target = device == null || !(device.stater() instanceof Device own) ? null
                : DeviceResolution.line(own).orElse(null);
        line.setText(target == null ? "" : "Line: " + title((DeviceParts) target));
        line.setVisible(target != null);
        line.getParent().layout();
    }

    private static String traits(DeviceParts parts) {
        return Stream.of(parts.isSetKind() ? parts.getKind().getLiteral() : null, parts.getMaker(), parts.getSize())
                .filter(Objects::nonNull).collect(Collectors.joining(BETWEEN));
    }

    private static String title(DeviceParts parts) {
        return parts.getName() == null ? String.valueOf(parts.getId()) : parts.getName();
    }
}
