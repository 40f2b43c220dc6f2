/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.io.IOException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.service.datalocation.Location;

/** Keeps a second process away from a workspace that is in use: each would write over the notes of the other. */
final class WorkspaceLock {

    private final Location workspace;

    /** Creates the lock of a workspace; null if the program runs without one. */
    WorkspaceLock(Location workspace) {
        this.workspace = workspace;
    }

    /** Takes the workspace until the process ends; tells the user, and returns false, if that is not possible. */
    boolean take() {
        try {
            boolean taken = workspace == null || lock();
            if (!taken) {
                refuse("Ferrule is already open on the workspace\n" + folder() + "\n\nGo on in its window (Window > New"
                        + " Window gives a second one), or start Ferrule with another workspace: -data FOLDER.");
            }
            return taken;
        } catch (IOException e) {
            refuse("The workspace\n" + folder() + "\ncannot be used: " + e.getMessage());
            return false;
        }
    }

    private boolean lock() throws IOException {
        return workspace.isSet() ? workspace.lock() : workspace.set(workspace.getDefault(), true);
    }

    private String folder() {
        return (workspace.isSet() ? workspace.getURL() : workspace.getDefault()).getPath();
    }

    private static void refuse(String message) {
        ILog.of(WorkspaceLock.class).warn(message.replaceAll("\\s+", " "));
        MessageDialog.openInformation(null, "Ferrule", message);
    }
}
