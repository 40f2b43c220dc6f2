/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.ferrule.ui.look.Colours;

/** Shows which verdicts an edit changes, and asks whether to save it, if that is what the user is about to do. */
final class EffectDialog extends TitleAreaDialog {

    private final EditEffect effect;
    private final boolean saving;
    private Button again;

    EffectDialog(Shell shell, EditEffect effect, boolean saving) {
        super(shell);
        this.effect = effect;
        this.saving = saving;
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setHelpAvailable(false);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("What This Edit Changes");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle(effect.changes().isEmpty() ? "No verdict changes" : summary());
        setMessage(EffectWords.explanation(effect));
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(10, 10).spacing(0, 8).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        if (!effect.changes().isEmpty()) {
            new EffectTable(area, effect.changes());
        }
        Label caution = new Label(area, SWT.WRAP);
        caution.setText("Verdicts rest on what the libraries say. The instructions for use of the devices decide.");
        caution.setForeground(Colours.muted());
        GridDataFactory.fillDefaults().grab(true, false).hint(500, SWT.DEFAULT).applyTo(caution);
        if (saving) {
            again = new Button(area, SWT.CHECK);
            again.setText("Show this before saving whenever a verdict changes");
            again.setSelection(true);
        }
        return area;
    }

    /** Without a list there is nothing to fill a large window with. */
    @Override
    protected Point getInitialSize() {
        Point usual = super.getInitialSize();
        return effect.changes().isEmpty()
                ? new Point(usual.x, getShell().computeSize(usual.x, SWT.DEFAULT, true).y) : usual;
    }

    private String summary() {
        return EffectWords.count(effect);
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        if (saving) {
            createButton(parent, IDialogConstants.OK_ID, "Save", true);
            createButton(parent, IDialogConstants.CANCEL_ID, "Go back", false);
        } else {
            createButton(parent, IDialogConstants.OK_ID, IDialogConstants.CLOSE_LABEL, true);
        }
    }

    @Override
    protected void buttonPressed(int id) {
        if (again != null) {
            EffectPreference.show(again.getSelection());
        }
        super.buttonPressed(id);
    }
}
