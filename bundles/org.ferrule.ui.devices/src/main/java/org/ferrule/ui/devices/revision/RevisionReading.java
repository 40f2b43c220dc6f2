/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.function.BiConsumer;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.ferrule.model.DeviceLibrary;

/** Reads a revision in the background, since a large library takes a second. */
final class RevisionReading extends Job {

    private final Revision revision;
    private final Display display;
    private final BiConsumer<DeviceLibrary, String> done;

    /**
     * Creates a reading that is to be scheduled.
     *
     * @param done is told, on the display's thread, the library or, without one, why there is none
     */
    RevisionReading(Revision revision, Display display, BiConsumer<DeviceLibrary, String> done) {
        super("Reading " + revision.title());
        this.revision = revision;
        this.display = display;
        this.done = done;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            DeviceLibrary library = revision.read();
            tell(library, "");
        } catch (CoreException e) {
            tell(null, e.getMessage());
        }
        return Status.OK_STATUS;
    }

    private void tell(DeviceLibrary library, String problem) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> done.accept(library, problem));
        }
    }
}
