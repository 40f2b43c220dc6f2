/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Shows what belongs to one object: its fields, or some of its parts. */
public interface PartView {

    /** Shows what belongs to this object; null shows nothing. */
    void show(Shown object);

    /** Shows the object or a part of it, and puts the cursor into the field of the feature, if it is not null. */
    boolean reveal(EObject object, EStructuralFeature feature);
}
