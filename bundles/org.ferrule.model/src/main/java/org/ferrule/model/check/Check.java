/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import org.eclipse.emf.ecore.EObject;

/** One rule for the content of documents. */
@FunctionalInterface
public interface Check {

    /**
     * Looks at one object of a document; objects that the rule is not about are passed over.
     *
     * @param object the object, in its document
     * @param examination where problems go
     */
    void check(EObject object, Examination examination);
}
