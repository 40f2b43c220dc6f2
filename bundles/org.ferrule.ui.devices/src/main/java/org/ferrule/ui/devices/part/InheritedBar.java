/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.events.IHyperlinkListener;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.ferrule.model.DeviceResolution;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** Says that a part is only inherited, and offers to state it for the device, or to go where it is stated. */
final class InheritedBar {

    private final EditContext context;
    private final Composite bar;
    private final Button override;
    private Shown shown;

    InheritedBar(EditContext context, Composite parent) {
        this.context = context;
        bar = context.toolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(12, 0).applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(bar);
        bar.setVisible(false);
        Label words = context.toolkit().createLabel(bar, "Stated by the line, for all its sizes");
        ThemeChange.text(words, Colours::muted);
        override = context.toolkit().createButton(bar, "Override here", SWT.PUSH);
        GridDataFactory.swtDefaults().applyTo(override);
        override.addSelectionListener(
                SelectionListener.widgetSelectedAdapter(event -> new PartEdits(context.session()).override(shown)));
        Hyperlink link = context.toolkit().createHyperlink(bar, "Go to the line", SWT.NONE);
        ThemeChange.text(link, Colours::link);
        link.addHyperlinkListener(
                IHyperlinkListener.linkActivatedAdapter(event -> context.goTo().accept(shown.stater())));
    }

    void show(Shown part) {
        shown = part;
        boolean needed = part != null && part.isInherited();
        showOverride(needed && canBeOverridden(part));
        override.setEnabled(context.session().editable());
        if (needed != bar.getVisible()) {
            bar.setVisible(needed);
            ((GridData) bar.getLayoutData()).exclude = !needed;
            context.reflow().run();
        }
    }

    private void showOverride(boolean needed) {
        override.setVisible(needed);
        ((GridData) override.getLayoutData()).exclude = !needed;
        bar.layout();
    }

    /** Parts of a list are matched with the line's by their names, or stated all together; others can only be added to. */
    private static boolean canBeOverridden(Shown part) {
        return !part.place().isMany() || DeviceResolution.isStatedWhole(part.place())
                || part.complete().eClass().getEStructuralFeature("name") != null;
    }
}
