/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.viewers.ILabelProvider;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPropertyListener;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.SessionListener;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.contents.ContentsTree;

/** What a document holds, as a tree. Follows the selection of its editor, and leads there. */
public final class DocumentOutline extends ContentOutlinePage implements SessionListener {

    /** A tree makes all items of a group to show one of them: too many to be made for every click in an editor. */
    private static final int MOST_FOLLOWED = 2_000;

    private final ISelectionChangedListener follower = this::follow;
    private final IPropertyListener mover = (source, property) -> moved(property);
    private final DocumentEditor editor;
    private final Supplier<ILabelProvider> labels;
    private DocumentSession session;
    private boolean busy;

    /**
     * Creates the outline of what an editor shows.
     *
     * @param labels makes the labels for the editor's document
     */
    public DocumentOutline(DocumentEditor editor, Supplier<ILabelProvider> labels) {
        this.editor = editor;
        this.labels = labels;
    }

    @Override
    public void createControl(Composite parent) {
        super.createControl(parent);
        TreeViewer tree = getTreeViewer();
        tree.setContentProvider(new ContentsTree());
        followDocument();
        editor.addPropertyListener(mover);
        editor.selection().addSelectionChangedListener(follower);
        editor.selection().object().ifPresent(this::show);
    }

    private void followDocument() {
        session = editor.session();
        session.addListener(this);
        getTreeViewer().setLabelProvider(labels.get());
        getTreeViewer().setInput(session);
    }

    /** After "Save As" the editor shows another file. */
    private void moved(int property) {
        if (property == IEditorPart.PROP_INPUT && editor.session() != null && !getControl().isDisposed()) {
            session.removeListener(this);
            followDocument();
        }
    }

    /** The user has selected something here: the editor shows it. */
    @Override
    public void selectionChanged(SelectionChangedEvent event) {
        super.selectionChanged(event);
        if (!busy && event.getStructuredSelection().getFirstElement() instanceof EObject object) {
            busy = true;
            editor.reveal(object, null);
            editor.selection().select(object);
            busy = false;
        }
    }

    private void follow(SelectionChangedEvent event) {
        if (!busy && event.getStructuredSelection().getFirstElement() instanceof EObject object) {
            show(object);
        }
    }

    private void show(EObject object) {
        EObject shown = object;
        while (shown.eContainer() != null && !shown.eContainmentFeature().isMany()) {
            shown = shown.eContainer();
        }
        if (!isInLargeGroup(shown)) {
            busy = true;
            getTreeViewer().setSelection(new StructuredSelection(shown), true);
            busy = false;
        }
    }

    private static boolean isInLargeGroup(EObject object) {
        for (EObject part = object; part.eContainer() != null; part = part.eContainer()) {
            if (part.eContainer().eGet(part.eContainmentFeature()) instanceof List<?> group
                    && group.size() > MOST_FOLLOWED) {
                return true;
            }
        }
        return false;
    }

    @Override
    public void documentChanged(DocumentChange change) {
        if (getControl().isDisposed()) {
            return;
        }
        if (change.reloaded() || change.notifications().stream().anyMatch(DocumentOutline::changesParts)) {
            getTreeViewer().refresh();
        } else {
            change.notifications().forEach(one -> getTreeViewer().update(one.getNotifier(), null));
        }
    }

    private static boolean changesParts(Notification notification) {
        return notification.getFeature() instanceof EReference;
    }

    @Override
    public void dispose() {
        if (session != null) {
            session.removeListener(this);
        }
        editor.removePropertyListener(mover);
        editor.selection().removeSelectionChangedListener(follower);
        super.dispose();
    }
}
