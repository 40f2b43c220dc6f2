/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.WorkbenchIds;

/** Life cycle of the workbench: what it shows first, and that the workspace is saved when it ends. */
public class FerruleWorkbenchAdvisor extends WorkbenchAdvisor {

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
        IDE.registerAdapters();
        ProjectImages.declare(configurer);
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new FerruleWindowAdvisor(configurer);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return WorkbenchIds.PERSPECTIVE;
    }

    @Override
    public IAdaptable getDefaultPageInput() {
        return ResourcesPlugin.getWorkspace().getRoot();
    }

    @Override
    public boolean preShutdown() {
        try {
            ResourcesPlugin.getWorkspace().save(true, null);
        } catch (CoreException e) {
            ILog.of(FerruleWorkbenchAdvisor.class).log(e.getStatus());
        }
        return super.preShutdown();
    }
}
