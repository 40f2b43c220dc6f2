/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.welcome;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.internal.project.ProjectOpening;

/** Asks for a folder and opens it as a project, where it is. */
public class OpenFolder extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        DirectoryDialog dialog = new DirectoryDialog(HandlerUtil.getActiveShellChecked(event));
        dialog.setText("Open Folder");
        dialog.setMessage("The folder becomes a project where it is; nothing is copied.");
        String folder = dialog.open();
        if (folder != null) {
            new ProjectOpening(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage())
                    .folder(IPath.fromOSString(folder));
        }
        return null;
    }
}
