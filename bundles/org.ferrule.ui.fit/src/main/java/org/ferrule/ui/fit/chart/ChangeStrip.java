/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.ferrule.ui.fit.matrix.ShownChanges;

/** Says above the matrix that only changes are shown, and how many. Takes no room otherwise. */
final class ChangeStrip {

    private final Composite control;
    private final Label text;

    ChangeStrip(Composite parent, FormToolkit toolkit, Runnable showAll) {
        control = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(control);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(control);
        text = toolkit.createLabel(control, "", SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(text);
        Hyperlink link = toolkit.createHyperlink(control, "Show all lines", SWT.NONE);
        link.addHyperlinkListener(new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent event) {
                showAll.run();
            }
        });
        control.setVisible(false);
    }

    void show(ChangeBase base, Optional<ShownChanges> changes) {
        boolean shown = base != ChangeBase.NONE;
        String words = changes.map(ShownChanges::count).map(count -> count == 0 ? ": nothing has"
                : ": " + count + (count == 1 ? " cell" : " cells")).orElse("");
        text.setText(base.word() + words);
        if (shown == ((GridData) control.getLayoutData()).exclude) {
            control.setVisible(shown);
            ((GridData) control.getLayoutData()).exclude = !shown;
            control.getParent().layout(true, true);
        }
    }

    /** Returns what it says; empty while all lines are shown. */
    String text() {
        return control.getVisible() ? text.getText() : "";
    }
}
