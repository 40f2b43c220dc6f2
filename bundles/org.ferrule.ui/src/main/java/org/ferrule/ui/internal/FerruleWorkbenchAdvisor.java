/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.util.Optional;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IPath;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.Services;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.internal.build.FirstCheck;
import org.ferrule.ui.internal.build.LiveChecks;
import org.ferrule.ui.internal.project.ProjectOpening;
import org.ferrule.ui.internal.recovery.Recovery;
import org.ferrule.ui.internal.welcome.WelcomeInput;

/** Life cycle of the workbench: what it shows first, and that the workspace is saved when it ends. */
public class FerruleWorkbenchAdvisor extends WorkbenchAdvisor {

    private final Optional<IPath> folder;

    /**
     * Creates an advisor.
     *
     * @param folder a folder to open as a project at the start
     */
    public FerruleWorkbenchAdvisor(Optional<IPath> folder) {
        this.folder = folder;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
        IDE.registerAdapters();
        PlatformImages.declare(configurer);
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
    public void postStartup() {
        new Pruning().prune();
        Services.get(LiveChecks.class).begin();
        FirstCheck.schedule();
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (window != null && folder.isPresent()) {
            new ProjectOpening(window.getActivePage()).folder(folder.get());
        } else if (window != null && ResourcesPlugin.getWorkspace().getRoot().getProjects().length == 0) {
            welcome(window.getActivePage());
        }
        if (window != null) {
            window.getShell().getDisplay().asyncExec(() -> new Recovery(window).offer());
        }
    }

    private static void welcome(IWorkbenchPage page) {
        try {
            page.openEditor(new WelcomeInput(), WorkbenchIds.WELCOME);
        } catch (PartInitException e) {
            ILog.of(FerruleWorkbenchAdvisor.class).log(e.getStatus());
        }
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
