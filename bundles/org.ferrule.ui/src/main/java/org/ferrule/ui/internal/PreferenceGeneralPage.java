/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

/** What concerns the whole workbench: light or dark. */
public class PreferenceGeneralPage extends PreferencePage implements IWorkbenchPreferencePage {

    private static final int NOTE_WIDTH = 380;

    private final Map<ThemeChoice, Button> themes = new EnumMap<>(ThemeChoice.class);

    @Override
    public void init(IWorkbench workbench) {
        setDescription("How the workbench looks. The choice changes no document and no printed page.");
    }

    @Override
    protected Control createContents(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(0, 8).applyTo(body);
        Group theme = new Group(body, SWT.NONE);
        theme.setText("Theme");
        GridLayoutFactory.fillDefaults().margins(10, 10).spacing(0, 6).applyTo(theme);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(theme);
        for (ThemeChoice choice : ThemeChoice.values()) {
            Button button = new Button(theme, SWT.RADIO);
            button.setText(choice.label());
            themes.put(choice, button);
        }
        Label note = new Label(theme, SWT.WRAP);
        note.setText("Open windows follow at once, a few of their images at the next start.");
        GridDataFactory.fillDefaults().grab(true, false).hint(NOTE_WIDTH, SWT.DEFAULT).indent(0, 4).applyTo(note);
        select(ThemeChoice.chosen());
        return body;
    }

    private void select(ThemeChoice chosen) {
        themes.forEach((choice, button) -> button.setSelection(choice == chosen));
    }

    @Override
    protected void performDefaults() {
        select(ThemeChoice.SYSTEM);
        super.performDefaults();
    }

    @Override
    public boolean performOk() {
        themes.forEach((choice, button) -> {
            if (button.getSelection() && choice != ThemeChoice.chosen()) {
                choice.choose();
            }
        });
        return true;
    }
}
