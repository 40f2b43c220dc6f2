/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/**
 * Opens the workbench and keeps it running until its last window closes. An argument that is a folder is opened as a
 * project, where it is.
 */
public class WorkbenchApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        keepOtherToolkitAway();
        Display display = PlatformUI.createDisplay();
        try {
            if (!new WorkspaceLock(Platform.getInstanceLocation()).take()) {
                return EXIT_OK;
            }
            FerruleWorkbenchAdvisor advisor = new FerruleWorkbenchAdvisor(folder(context));
            int code = PlatformUI.createAndRunWorkbench(display, advisor);
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    /** The writers of documents touch AWT, whose windowing would crash beside GTK in the same process. */
    private static void keepOtherToolkitAway() {
        System.setProperty("java.awt.headless", "true");
    }

    /** The first argument that is a folder is opened as a project. */
    private static Optional<IPath> folder(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        return Stream.of(arguments).filter(argument -> !argument.startsWith("-")).map(Path::of)
                .filter(Files::isDirectory).map(path -> IPath.fromPath(path.toAbsolutePath().normalize())).findFirst();
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            workbench.getDisplay().syncExec(workbench::close);
        }
    }
}
