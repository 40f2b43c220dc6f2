/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.help;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.Document;
import org.ferrule.picture.Picture;
import org.osgi.framework.FrameworkUtil;

/** The pictures that bundles contribute to the help, and the documents of the demo from which they are drawn. */
public final class HelpPictures {

    private static final String POINT = "org.ferrule.ui.helpPages";
    private static final String FOLDER = "demo/";

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

    /**
     * Reads a document of the demo.
     *
     * @param name the name of its file
     * @throws CoreException if it is not there or not of that type
     */
    public static <D extends Document> D demo(String name, Class<D> type) throws CoreException {
        URL entry = FrameworkUtil.getBundle(HelpPictures.class).getEntry(FOLDER + name);
        if (entry == null) {
            throw new CoreException(Status.error("There is no " + name + " in the demo"));
        }
        try (InputStream stream = entry.openStream()) {
            return new JsonDocuments().read(stream, name).document().filter(type::isInstance).map(type::cast)
                    .orElseThrow(() -> new CoreException(Status.error(name + " cannot be read")));
        } catch (IOException e) {
            throw new CoreException(Status.error(name + " cannot be read", e));
        }
    }
}
