/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.services.IServiceLocator;
import org.ferrule.ui.document.DocumentSession;

/**
 * What forms and lists need of the page that they stand on.
 *
 * @param session the document
 * @param toolkit for controls that look alike
 * @param reflow is run when something needs more or less room
 * @param goTo shows another object of the document
 * @param services of the part on which the page stands
 */
public record EditContext(DocumentSession session, FormToolkit toolkit, Runnable reflow, Consumer<EObject> goTo,
        IServiceLocator services) {

    /** Returns a context with another way to make room. */
    public EditContext reflowing(Runnable action) {
        return new EditContext(session, toolkit, action, goTo, services);
    }
}
