/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.project;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import java.util.List;

import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.ferrule.ui.internal.build.DocumentNature;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** The demo: an invented laboratory, copied into the workspace so that it can be changed at will. */
public final class DemoProject {

    /** The name of the project. */
    public static final String NAME = "Demo";

    private static final String FOLDER = "demo";

    private DemoProject() {
    }

    /** Returns the demo; copies it first if it is not in the workspace. */
    public static IProject open(IWorkspace workspace, IProgressMonitor monitor) throws CoreException {
        SubMonitor progress = SubMonitor.convert(monitor, "Opening the demo", 10);
        IProject project = workspace.getRoot().getProject(NAME);
        if (!project.exists()) {
            workspace.run(m -> create(project, m), workspace.getRoot(), IWorkspace.AVOID_UPDATE, progress.split(9));
        }
        project.open(progress.split(1));
        return project;
    }

    private static void create(IProject project, IProgressMonitor monitor) throws CoreException {
        List<URL> entries = entries();
        SubMonitor progress = SubMonitor.convert(monitor, entries.size() + 3);
        project.create(progress.split(1));
        project.open(progress.split(1));
        DocumentNature.addTo(project, progress.split(1));
        for (URL entry : entries) {
            copy(entry, project, progress.split(1));
        }
    }

    private static List<URL> entries() throws CoreException {
        Bundle bundle = FrameworkUtil.getBundle(DemoProject.class);
        var entries = bundle.findEntries(FOLDER, "*", true);
        if (entries == null) {
            throw new CoreException(Status.error("The demo is missing from " + bundle.getSymbolicName()));
        }
        return Collections.list(entries).stream().filter(url -> !url.getPath().endsWith("/")).toList();
    }

    private static void copy(URL entry, IProject project, IProgressMonitor monitor) throws CoreException {
        IPath path = IPath.fromPortableString(entry.getPath()).makeRelative().removeFirstSegments(1);
        IFile file = project.getFile(path);
        createFolders(file.getParent());
        try (InputStream stream = entry.openStream()) {
            file.create(stream, false, monitor);
        } catch (IOException e) {
            throw new CoreException(Status.error("Cannot copy " + entry, e));
        }
    }

    private static void createFolders(IContainer container) throws CoreException {
        if (container instanceof IFolder folder && !folder.exists()) {
            createFolders(folder.getParent());
            folder.create(false, true, null);
        }
    }
}
