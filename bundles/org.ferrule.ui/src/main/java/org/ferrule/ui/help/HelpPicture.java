/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.help;

import org.eclipse.core.runtime.CoreException;
import org.ferrule.picture.Picture;

/**
 * Draws a picture of a help page from the demo that ships with the program, so that the help shows what the program would
 * show; see {@link HelpDemo}. Contributed at the extension point {@code org.ferrule.ui.helpPages}.
 */
public interface HelpPicture {

    /**
     * Draws the picture in inks of a light page; the screen shows them as its theme wants.
     *
     * @param widthMm its width in millimetres
     * @throws CoreException if what it is drawn from cannot be read
     */
    Picture draw(double widthMm) throws CoreException;
}
