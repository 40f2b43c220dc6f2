/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.contents;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.ferrule.model.Features;
import org.ferrule.ui.document.DocumentSession;

/** A document as a tree: what it says as a whole, then its groups, and below every member that has some its own.
 * Its input is a session. */
public final class ContentsTree implements ITreeContentProvider {

    @Override
    public Object[] getElements(Object input) {
        return ((DocumentSession) input).document().map(ContentsTree::withGroups).orElse(new Object[0]);
    }

    private static Object[] withGroups(EObject document) {
        List<Object> all = new ArrayList<>(List.of(document));
        all.addAll(groups(document));
        return all.toArray();
    }

    private static List<Group> groups(EObject holder) {
        List<Group> groups = new ArrayList<>();
        for (EStructuralFeature feature : Features.inDocumentOrder(holder.eClass())) {
            if (feature instanceof EReference reference && reference.isMany()) {
                groups.add(new Group(holder, reference));
            }
        }
        return groups;
    }

    @Override
    public Object[] getChildren(Object parent) {
        return parent instanceof Group group ? group.members().toArray() : groups((EObject) parent).toArray();
    }

    @Override
    public Object getParent(Object element) {
        if (element instanceof Group group) {
            return group.holder().eContainer() == null ? null : group.holder();
        }
        EObject object = (EObject) element;
        return object.eContainer() == null ? null : new Group(object.eContainer(), object.eContainmentFeature());
    }

    @Override
    public boolean hasChildren(Object element) {
        return element instanceof Group group ? !group.members().isEmpty()
                : ((EObject) element).eContainer() != null && !groups((EObject) element).isEmpty();
    }
}
