/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.explorer;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.ferrule.model.DeviceLine;

/** Lines and devices stand in the order of their document, lines first. */
public class DocumentOrder extends ViewerComparator {

    @Override
    public int category(Object element) {
        return element instanceof DocumentNode node && node.object() instanceof DeviceLine ? 0 : 1;
    }

    @Override
    public int compare(Viewer viewer, Object one, Object other) {
        if (!(one instanceof DocumentNode first) || !(other instanceof DocumentNode second)) {
            return super.compare(viewer, one, other);
        }
        int byCategory = Integer.compare(category(first), category(second));
        return byCategory != 0 ? byCategory : Integer.compare(index(first.object()), index(second.object()));
    }

    private static int index(EObject object) {
        return ((List<?>) object.eContainer().eGet(object.eContainingFeature())).indexOf(object);
    }
}
