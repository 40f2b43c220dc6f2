/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.welcome;

import org.eclipse.core.runtime.PlatformObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import org.ferrule.ui.look.Icons;

/** Stands for the one welcome page. */
public final class WelcomeInput extends PlatformObject implements IEditorInput {

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Icons.WELCOME.descriptor();
    }

    @Override
    public String getName() {
        return "Welcome";
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return "Welcome";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WelcomeInput;
    }

    @Override
    public int hashCode() {
        return WelcomeInput.class.hashCode();
    }
}
