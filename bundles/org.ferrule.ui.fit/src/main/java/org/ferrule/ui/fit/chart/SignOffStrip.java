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
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.ferrule.engine.signoff.SignOffState;
import org.ferrule.engine.signoff.SignOffWords;

/** Says in the head of the matrix who has signed the chart off, and plainly when that holds no more. */
final class SignOffStrip {

    private final SignOffWords words = new SignOffWords();
    private final Composite control;
    private final Label icon;
    private final Label text;
    private final Hyperlink link;

    SignOffStrip(Composite parent, FormToolkit toolkit, Runnable showChanges) {
        control = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(control);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(control);
        icon = toolkit.createLabel(control, null);
        text = toolkit.createLabel(control, "", SWT.WRAP);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(200, SWT.DEFAULT)
                .applyTo(text);
        link = toolkit.createHyperlink(control, "What changed", SWT.NONE);
        link.setToolTipText("Lists the changes beside the matrix");
        link.addHyperlinkListener(new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent event) {
                showChanges.run();
            }
        });
        control.setVisible(false);
    }

    void show(Optional<SignOffState> state) {
        boolean outdated = state.filter(s -> !s.upToDate()).isPresent();
        icon.setImage(PlatformUI.getWorkbench().getSharedImages()
                .getImage(outdated ? ISharedImages.IMG_OBJS_WARN_TSK : ISharedImages.IMG_OBJS_INFO_TSK));
        text.setText(state.map(words::head).orElse(""));
        link.setVisible(outdated);
        control.setVisible(state.isPresent());
        ((GridData) control.getLayoutData()).exclude = state.isEmpty();
        control.getParent().layout(true, true);
    }

    /** Returns what it says, for those who want to look at it. */
    String text() {
        return control.getVisible() ? text.getText() : "";
    }
}
