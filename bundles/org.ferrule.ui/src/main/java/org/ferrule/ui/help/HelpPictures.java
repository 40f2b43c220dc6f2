/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.help;

import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.ferrule.picture.Picture;

/** The pictures that bundles contribute to the help. */
public final class HelpPictures {

    private static final String POINT = "org.ferrule.ui.helpPages";

    private HelpPictures() {
    }

    /**
     * Draws a picture.
     *
     * @param id the bundle and the id of its picture, with a slash between
     * @throws CoreException if there is none, or it cannot be drawn
     */
    public static Picture draw(String id, double widthMm) throws CoreException {
        IConfigurationElement element = Stream.of(Platform.getExtensionRegistry().getConfigurationElementsFor(POINT))
                .filter(one -> "picture".equals(one.getName()))
                .filter(one -> id.equals(one.getContributor().getName() + "/" + one.getAttribute("id"))).findFirst()
                .orElseThrow(() -> new CoreException(Status.error("There is no help picture " + id)));
        return ((HelpPicture) element.createExecutableExtension("class")).draw(widthMm);
    }
}
