/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.contents;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * The things of one kind that something holds.
 *
 * @param holder what holds them
 * @param reference the feature that holds them
 */
public record Group(EObject holder, EReference reference) {

    /** Returns them, in their order. */
    public List<?> members() {
        return (List<?>) holder.eGet(reference);
    }
}
