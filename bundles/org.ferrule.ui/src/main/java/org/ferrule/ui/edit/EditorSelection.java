/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import java.util.Optional;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.Control;

/** The object of a document that an editor is about just now: what its outline and the Properties view follow. */
public final class EditorSelection implements ISelectionProvider {

    private static final String KEY = EditorSelection.class.getName();

    private final ListenerList<ISelectionChangedListener> listeners = new ListenerList<>();
    private IStructuredSelection selection = StructuredSelection.EMPTY;

    /** Makes this the selection of everything inside the control. */
    void install(Control control) {
        control.setData(KEY, this);
    }

    /** Returns the selection of the editor that the control belongs to. */
    public static Optional<EditorSelection> of(Control control) {
        for (Control inner = control; inner != null; inner = inner.getParent()) {
            if (inner.getData(KEY) instanceof EditorSelection found) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** Returns the object, if there is one. */
    public Optional<EObject> object() {
        return selection.getFirstElement() instanceof EObject object ? Optional.of(object) : Optional.empty();
    }

    /** Selects an object of the document; null selects nothing. The same object again changes nothing. */
    public void select(EObject object) {
        if (object().orElse(null) != object) {
            setSelection(object == null ? StructuredSelection.EMPTY : new StructuredSelection(object));
        }
    }

    @Override
    public void setSelection(ISelection next) {
        selection = next instanceof IStructuredSelection structured ? structured : StructuredSelection.EMPTY;
        SelectionChangedEvent event = new SelectionChangedEvent(this, selection);
        listeners.forEach(listener -> listener.selectionChanged(event));
    }

    @Override
    public ISelection getSelection() {
        return selection;
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
