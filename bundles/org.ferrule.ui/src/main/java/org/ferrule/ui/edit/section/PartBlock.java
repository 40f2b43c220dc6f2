/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.section;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What a section shows of its object below the fields. */
public interface PartBlock {

    /** Shows what the object says now; null shows nothing that could be changed. */
    void show(EObject shown);

    /** Shows the feature of an object, if this is where it stands. */
    boolean reveal(EObject wanted, EStructuralFeature feature);
}
