/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.ui.forms.editor.FormEditor;
import org.eclipse.ui.forms.editor.IFormPage;

/** Finds the page of an editor that shows an object, and brings it up. */
final class PageReveal implements RevealTarget {

    private final FormEditor editor;
    private final List<?> pages;

    /**
     * Creates it.
     *
     * @param pages the editor's pages, as they come and go
     */
    PageReveal(FormEditor editor, List<?> pages) {
        this.editor = editor;
        this.pages = pages;
    }

    /** Asks the pages in their order, the active one first. */
    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        IFormPage active = editor.getActivePageInstance();
        if (active instanceof RevealTarget target && target.reveal(object, feature)) {
            return true;
        }
        for (Object page : pages.toArray()) {
            if (page != active && page instanceof RevealTarget target
                    && show((IFormPage) page, target, object, feature)) {
                return true;
            }
        }
        return false;
    }

    private boolean show(IFormPage page, RevealTarget target, EObject object, EStructuralFeature feature) {
        IFormPage before = editor.getActivePageInstance();
        editor.setActivePage(page.getId());
        boolean shown = target.reveal(object, feature);
        if (!shown && before != null) {
            editor.setActivePage(before.getId());
        }
        return shown;
    }

    /**
     * Shows what has no place of its own where the object stands, or what holds that.
     *
     * @param feature the name of a feature of the object; any other means the object itself
     */
    boolean revealNearest(EObject object, String feature) {
        return revealNearest(object, object.eClass().getEStructuralFeature(feature));
    }

    private boolean revealNearest(EObject object, EStructuralFeature feature) {
        return reveal(object, feature) || feature != null && reveal(object, null)
                || object.eContainer() != null && revealNearest(object.eContainer(), object.eContainmentFeature());
    }
}
