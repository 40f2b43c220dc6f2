/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.grounds;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.part.ViewPart;
import org.ferrule.ui.Services;
import org.ferrule.ui.fit.answer.AnswerPanel;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.answer.ComparedPairs;
import org.ferrule.ui.fit.answer.PairSelectionProvider;
import org.ferrule.ui.preferences.UnitPreferences;

/** Explains the answer about the pair that is selected anywhere in the window; several are compared side by side. */
public final class GroundsView extends ViewPart {

    private static final String NOTHING = "Select a cell of a fit chart to see on what its answer rests.";

    private final UnitPreferences units = Services.get(UnitPreferences.class);
    private final Runnable unitFollower = this::unitsChanged;
    private final StackLayout stack = new StackLayout();
    private final ISelectionListener follower = this::selected;
    private final IPartListener2 closing = new Closing();
    private AnswerPanel panel;
    private ComparedPairs compared;
    private Display display;
    private IWorkbenchPart source;

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        parent.setLayout(stack);
        panel = new AnswerPanel(parent);
        compared = new ComparedPairs(parent);
        stack.topControl = panel.control();
        panel.clear(NOTHING);
        IWorkbenchPage page = getSite().getPage();
        page.addSelectionListener(follower);
        page.addPartListener(closing);
        units.addListener(unitFollower);
        source = page.getActiveEditor();
        show(selectedInEditor(page));
    }

    private void selected(IWorkbenchPart part, ISelection selection) {
        List<AskedPair> pairs = PairSelectionProvider.pairsIn(selection);
        if (!pairs.isEmpty()) {
            source = part;
            show(pairs);
        }
    }

    /** A view that opens late shows what is selected already. */
    private static List<AskedPair> selectedInEditor(IWorkbenchPage page) {
        return Optional.ofNullable(page.getActiveEditor()).map(editor -> editor.getSite().getSelectionProvider())
                .map(provider -> PairSelectionProvider.pairsIn(provider.getSelection())).orElse(List.of());
    }

    /** One pair is explained, several are compared; what is no pair changes nothing. */
    private void show(List<AskedPair> pairs) {
        if (pairs.size() == 1) {
            panel.show(pairs.get(0));
            bringUp(panel.control());
        } else if (pairs.size() > 1) {
            compared.show(pairs.subList(0, Math.min(pairs.size(), ComparedPairs.MOST)));
            bringUp(compared.control());
        }
    }

    private void bringUp(Control wanted) {
        if (stack.topControl != wanted) {
            stack.topControl = wanted;
            wanted.getParent().layout();
        }
    }

    private boolean compares() {
        return stack.topControl == compared.control();
    }

    private void unitsChanged() {
        display.asyncExec(() -> {
            if (!panel.control().isDisposed()) {
                show(compares() ? compared.shown() : panel.shown().stream().toList());
            }
        });
    }

    /** Returns what is shown, for those who want to look at it. */
    public AnswerPanel panel() {
        return panel;
    }

    /** Returns what is compared, for those who want to look at it. */
    public ComparedPairs compared() {
        return compared;
    }

    @Override
    public void setFocus() {
        if (compares()) {
            compared.setFocus();
        } else {
            panel.setFocus();
        }
    }

    @Override
    public void dispose() {
        getSite().getPage().removeSelectionListener(follower);
        getSite().getPage().removePartListener(closing);
        units.removeListener(unitFollower);
        super.dispose();
    }

    /** Of a chart that is closed nothing is known any more. */
    private final class Closing implements IPartListener2 {

        @Override
        public void partClosed(IWorkbenchPartReference closed) {
            if (source != null && closed.getPart(false) == source) {
                source = null;
                panel.clear(NOTHING);
                bringUp(panel.control());
            }
        }
    }
}
