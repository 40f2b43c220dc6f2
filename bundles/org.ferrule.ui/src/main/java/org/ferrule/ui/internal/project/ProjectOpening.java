/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.project;

import java.lang.reflect.InvocationTargetException;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IEditorDescriptor;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.navigator.CommonNavigator;
import org.eclipse.ui.navigator.resources.ProjectExplorer;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.model.DocumentKind;
import org.ferrule.ui.internal.build.References;

/** Opens projects and shows them: in the explorer, and the first chart in its editor. */
public final class ProjectOpening {

    private static final String OURS = "org.ferrule.";

    @FunctionalInterface
    private interface Source {
        IProject open(IWorkspace workspace, IProgressMonitor monitor) throws CoreException;
    }

    private final IWorkbenchPage page;

    /** Creates an opening that shows projects in the page. */
    public ProjectOpening(IWorkbenchPage page) {
        this.page = page;
    }

    /** Opens the demo and shows its first chart. Shows an error if that fails. */
    public void demo() {
        open(DemoProject::open).ifPresent(this::showChart);
    }

    /** Opens the folder as a project. Shows an error if that fails. */
    public void folder(IPath folder) {
        open((workspace, monitor) -> FolderProject.open(workspace, folder, monitor));
    }

    private Optional<IProject> open(Source source) {
        AtomicReference<IProject> opened = new AtomicReference<>();
        try {
            PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> open(source, monitor, opened));
            showInExplorer(opened.get());
            return Optional.of(opened.get());
        } catch (InvocationTargetException e) {
            show(e.getCause() instanceof CoreException cause ? cause.getStatus()
                    : Status.error("The project cannot be opened", e.getCause()));
        } catch (PartInitException e) {
            show(e.getStatus());
        } catch (InterruptedException e) {
            // the user has cancelled it: what is opened so far stays
            return Optional.empty();
        }
        return Optional.empty();
    }

    private static void open(Source source, IProgressMonitor monitor, AtomicReference<IProject> opened)
            throws InvocationTargetException, InterruptedException {
        try {
            opened.set(source.open(ResourcesPlugin.getWorkspace(), monitor));
        } catch (CoreException e) {
            throw new InvocationTargetException(e);
        } catch (OperationCanceledException e) {
            throw new InterruptedException(e.getMessage());
        }
    }

    private static void show(IStatus status) {
        StatusManager.getManager().handle(status, StatusManager.SHOW | StatusManager.LOG);
    }

    private void showInExplorer(IProject project) throws PartInitException {
        IViewPart view = page.showView(ProjectExplorer.VIEW_ID);
        if (view instanceof CommonNavigator explorer) {
            explorer.selectReveal(new StructuredSelection(project));
            explorer.getCommonViewer().expandToLevel(project, 1);
        }
    }

    private void showChart(IProject project) {
        try {
            Optional<IFile> chart = References.documents(project).stream()
                    .filter(file -> file.getName().endsWith(DocumentKind.CHART.suffix()))
                    .min(Comparator.comparing(IFile::getName));
            if (chart.isPresent() && hasOwnEditor(chart.get())) {
                IDE.openEditor(page, chart.get());
            }
        } catch (CoreException e) {
            show(e.getStatus());
        }
    }

    private static boolean hasOwnEditor(IFile file) {
        IEditorDescriptor editor = IDE.getDefaultEditor(file);
        return editor != null && editor.getId().startsWith(OURS);
    }
}
