/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.problem;

import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;

/**
 * Finds problems in documents. Contributed at the extension point {@code org.ferrule.ui.problemSources}; called off the
 * display's thread, on the saved state and, shortly after every edit, on the unsaved one. A document is looked at again
 * when it or a document that it refers to has changed.
 */
public interface ProblemSource {

    /**
     * Returns what is wrong or doubtful in the document.
     *
     * @throws CoreException if it cannot be found out; this is shown as a problem of its own
     */
    List<FoundProblem> find(ProblemRequest request, IProgressMonitor monitor) throws CoreException;
}
