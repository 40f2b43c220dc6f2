/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.project;

import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.ferrule.ui.internal.build.DocumentNature;

/** A folder opened as a project, where it is: nothing is copied. */
public final class FolderProject {

    private FolderProject() {
    }

    /** Returns the project of the folder; makes one first if there is none. */
    public static IProject open(IWorkspace workspace, IPath folder, IProgressMonitor monitor) throws CoreException {
        SubMonitor progress = SubMonitor.convert(monitor, "Opening " + folder.lastSegment(), 10);
        IProject known = Stream.of(workspace.getRoot().getProjects())
                .filter(project -> folder.equals(project.getLocation())).findFirst().orElse(null);
        IProject project = known != null ? known : create(workspace, folder, progress.split(1));
        project.open(progress.split(8));
        DocumentNature.addTo(project, progress.split(1));
        return project;
    }

    private static IProject create(IWorkspace workspace, IPath folder, IProgressMonitor monitor)
            throws CoreException {
        IPath file = folder.append(IProjectDescription.DESCRIPTION_FILE_NAME);
        IProjectDescription description = file.toFile().exists() ? workspace.loadProjectDescription(file)
                : workspace.newProjectDescription(folder.lastSegment());
        description.setName(freeName(workspace.getRoot(), description.getName()));
        description.setLocation(isInside(workspace.getRoot(), folder) ? null : folder);
        IProject project = workspace.getRoot().getProject(description.getName());
        project.create(description, monitor);
        return project;
    }

    /** The workspace wants no location for what is in its usual place. */
    private static boolean isInside(IWorkspaceRoot root, IPath folder) {
        return root.getLocation().equals(folder.removeLastSegments(1));
    }

    private static String freeName(IWorkspaceRoot root, String name) {
        return Stream.concat(Stream.of(name), IntStream.iterate(2, i -> i + 1).mapToObj(i -> name + " " + i))
                .filter(candidate -> !root.getProject(candidate).exists()).findFirst().orElseThrow();
    }
}
