/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.grounds;

import java.util.Optional;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.part.ViewPart;
import org.ferrule.ui.Services;
import org.ferrule.ui.fit.answer.AnswerPanel;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.answer.PairSelectionProvider;
import org.ferrule.ui.preferences.UnitPreferences;

/** Explains the answer about the pair that is selected anywhere in the window. */
public final class GroundsView extends ViewPart {

    private static final String NOTHING = "Select a cell of a fit chart to see on what its answer rests.";

    private final UnitPreferences units = Services.get(UnitPreferences.class);
    private final Runnable unitFollower = this::unitsChanged;
    private final ISelectionListener follower = (part, selection) -> PairSelectionProvider.pairIn(selection)
            .ifPresent(this::show);
    private AnswerPanel panel;
    private Display display;

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        panel = new AnswerPanel(parent);
        panel.clear(NOTHING);
        IWorkbenchPage page = getSite().getPage();
        page.addSelectionListener(follower);
        units.addListener(unitFollower);
        selectedInEditor(page).ifPresent(this::show);
    }

    /** A view that opens late shows what is selected already. */
    private static Optional<AskedPair> selectedInEditor(IWorkbenchPage page) {
        return Optional.ofNullable(page.getActiveEditor()).map(editor -> editor.getSite().getSelectionProvider())
                .flatMap(provider -> PairSelectionProvider.pairIn(provider.getSelection()));
    }

    private void show(AskedPair pair) {
        panel.show(pair);
    }

    private void unitsChanged() {
        display.asyncExec(() -> {
            if (!panel.control().isDisposed()) {
                panel.shown().ifPresent(this::show);
            }
        });
    }

    /** Returns what is shown, for those who want to look at it. */
    public AnswerPanel panel() {
        return panel;
    }

    @Override
    public void setFocus() {
        panel.setFocus();
    }

    @Override
    public void dispose() {
        getSite().getPage().removeSelectionListener(follower);
        units.removeListener(unitFollower);
        super.dispose();
    }
}
