/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;

/** Tells the workbench which pair is selected in a part. */
public final class PairSelectionProvider implements ISelectionProvider {

    private final List<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();
    private IStructuredSelection selection = StructuredSelection.EMPTY;

    /** Selects the pair, or nothing. */
    public void select(Optional<AskedPair> pair) {
        select(pair.stream().toList());
    }

    /** Selects pairs, the one that is meant first first; maybe none. */
    public void select(List<AskedPair> pairs) {
        setSelection(pairs.isEmpty() ? StructuredSelection.EMPTY : new StructuredSelection(pairs));
    }

    /** Returns the pairs in a selection of the workbench; none where something else is selected. */
    public static List<AskedPair> pairsIn(ISelection selected) {
        return selected instanceof IStructuredSelection structured ? structured.stream()
                .filter(AskedPair.class::isInstance).map(AskedPair.class::cast).toList() : List.of();
    }

    /** Returns the pair in a selection of the workbench. */
    public static Optional<AskedPair> pairIn(ISelection selected) {
        return selected instanceof IStructuredSelection structured
                && structured.getFirstElement() instanceof AskedPair pair ? Optional.of(pair) : Optional.empty();
    }

    @Override
    public ISelection getSelection() {
        return selection;
    }

    @Override
    public void setSelection(ISelection selected) {
        selection = (IStructuredSelection) selected;
        SelectionChangedEvent event = new SelectionChangedEvent(this, selection);
        listeners.forEach(listener -> listener.selectionChanged(event));
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }
}
