/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Something that can show an object of a document, such as an editor or one of its pages. */
public interface RevealTarget {

    /**
     * Shows the object, and puts the cursor into the field of the feature.
     *
     * @param object an object of the document that is shown
     * @param feature one of its features, or null for the object as a whole
     * @return whether it could be shown
     */
    boolean reveal(EObject object, EStructuralFeature feature);
}
