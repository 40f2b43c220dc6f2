/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.rules;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.ferrule.model.Features;
import org.ferrule.ui.document.DocumentSession;

/** The document, and below it a group for each kind of thing that it holds. */
final class RuleTree implements ITreeContentProvider {

    /**
     * The things of one kind.
     *
     * @param document what holds them
     * @param reference the feature that holds them
     */
    record Group(EObject document, EReference reference) {

        List<?> members() {
            return (List<?>) document.eGet(reference);
        }
    }

    @Override
    public Object[] getElements(Object input) {
        return ((DocumentSession) input).document().map(document -> withGroups(document)).orElse(new Object[0]);
    }

    private static Object[] withGroups(EObject document) {
        List<Object> all = new ArrayList<>(List.of(document));
        for (EStructuralFeature feature : Features.inDocumentOrder(document.eClass())) {
            if (feature instanceof EReference reference && reference.isMany()) {
                all.add(new Group(document, reference));
            }
        }
        return all.toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        return parent instanceof Group group ? group.members().toArray() : new Object[0];
    }

    @Override
    public Object getParent(Object element) {
        return element instanceof EObject object && object.eContainer() != null
                ? new Group(object.eContainer(), object.eContainmentFeature())
                : null;
    }

    @Override
    public boolean hasChildren(Object element) {
        return element instanceof Group group && !group.members().isEmpty();
    }
}
