/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.net.URL;

import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.ide.IDE;

/** The two project images that the explorer asks for by name and that only the host application can declare. */
final class ProjectImages {

    private static final String IDE_BUNDLE = "org.eclipse.ui.ide";
    private static final String FOLDER = "$nl$/icons/full/obj16/";

    private ProjectImages() {
    }

    static void declare(IWorkbenchConfigurer configurer) {
        declare(configurer, IDE.SharedImages.IMG_OBJ_PROJECT, "prj_obj.svg");
        declare(configurer, IDE.SharedImages.IMG_OBJ_PROJECT_CLOSED, "cprj_obj.svg");
    }

    private static void declare(IWorkbenchConfigurer configurer, String name, String file) {
        URL url = FileLocator.find(Platform.getBundle(IDE_BUNDLE), new Path(FOLDER + file), null);
        configurer.declareImage(name, ImageDescriptor.createFromURL(url), true);
    }
}
