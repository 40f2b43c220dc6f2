/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;

/** The file on disk is not what was read: somebody else has changed or deleted it. Nothing was written. */
public class SaveConflictException extends CoreException {

    private static final long serialVersionUID = 1L;

    /** Creates an exception that names the file. */
    public SaveConflictException(IFile file) {
        super(Status.error(file.getFullPath() + (file.exists() ? " was changed" : " was deleted")
                + " by another program since it was read"));
    }
}
