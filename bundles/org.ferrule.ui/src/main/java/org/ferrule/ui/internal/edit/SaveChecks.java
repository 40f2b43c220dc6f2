/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.widgets.Shell;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.SaveCheck;

/** Asks every contributed check whether a document may be saved; one that fails must not keep the user from saving. */
final class SaveChecks {

    private static final String POINT = "org.ferrule.ui.saveChecks";

    private SaveChecks() {
    }

    /**
     * Returns if the document may be saved.
     *
     * @throws OperationCanceledException if the user goes back
     */
    static void ask(DocumentSession session, Shell shell) {
        session.commitDrafts();
        for (SaveCheck check : checks()) {
            if (!allows(check, session, shell)) {
                throw new OperationCanceledException();
            }
        }
    }

    private static boolean allows(SaveCheck check, DocumentSession session, Shell shell) {
        try {
            return check.maySave(session, shell);
        } catch (RuntimeException | LinkageError e) {
            ILog.of(SaveChecks.class).error(check.getClass().getName() + " has failed", e);
            return true;
        }
    }

    private static List<SaveCheck> checks() {
        List<SaveCheck> made = new ArrayList<>();
        for (IConfigurationElement element : Platform.getExtensionRegistry().getConfigurationElementsFor(POINT)) {
            try {
                made.add((SaveCheck) element.createExecutableExtension("class"));
            } catch (CoreException e) {
                ILog.of(SaveChecks.class).log(e.getStatus());
            }
        }
        return made;
    }
}
