/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.engine.chart.ChartProblem;

/** Says above the matrix what keeps it, or a part of it, from being answered. Takes no room otherwise. */
final class ProblemStrip {

    private static final int MOST = 3;

    private final Composite control;
    private final Label text;

    ProblemStrip(Composite parent, FormToolkit toolkit) {
        control = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(control);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(control);
        Label icon = toolkit.createLabel(control, null);
        icon.setImage(PlatformUI.getWorkbench().getSharedImages().getImage(ISharedImages.IMG_OBJS_ERROR_TSK));
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(icon);
        text = toolkit.createLabel(control, "", SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(text);
        control.setVisible(false);
    }

    void show(List<ChartProblem> problems, boolean stale) {
        String words = problems.isEmpty() ? "" : words(problems, stale);
        if (!words.equals(text.getText())) {
            text.setText(words);
            control.setVisible(!problems.isEmpty());
            ((GridData) control.getLayoutData()).exclude = problems.isEmpty();
            control.getParent().layout(true, true);
        }
    }

    private static String words(List<ChartProblem> problems, boolean stale) {
        String found = problems.stream().limit(MOST).map(problem -> problem.place() + ": " + problem.message())
                .collect(Collectors.joining("\n"));
        String more = problems.size() > MOST ? "\nand " + (problems.size() - MOST) + " more; see Problems" : "";
        String last = stale ? "\nThe last good answer is shown." : "";
        return found + more + last;
    }
}
