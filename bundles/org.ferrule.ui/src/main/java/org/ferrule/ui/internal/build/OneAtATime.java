/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.jobs.ISchedulingRule;

/**
 * Keeps two checks of one file apart, without keeping anybody from working on the file meanwhile. Writing markers needs
 * no rule of the workspace.
 *
 * @param file the file
 */
record OneAtATime(IFile file) implements ISchedulingRule {

    @Override
    public boolean contains(ISchedulingRule rule) {
        return equals(rule);
    }

    @Override
    public boolean isConflicting(ISchedulingRule rule) {
        return equals(rule);
    }
}
