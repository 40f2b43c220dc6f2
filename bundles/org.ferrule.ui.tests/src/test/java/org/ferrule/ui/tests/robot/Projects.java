/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.nio.charset.StandardCharsets;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;

/** Projects with documents, for tests. */
public final class Projects {

    private static final String NATURE = "org.ferrule.ui.nature";

    private Projects() {
    }

    /** Creates an empty project in which documents are checked. */
    public static IProject create(String name) throws CoreException {
        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(name);
        project.create(null);
        project.open(null);
        IProjectDescription description = project.getDescription();
        description.setNatureIds(new String[] { NATURE });
        project.setDescription(description, null);
        return project;
    }

    /** Creates or replaces a file. */
    public static IFile write(IProject project, String name, String content) throws CoreException {
        IFile file = project.getFile(name);
        file.write(content.getBytes(StandardCharsets.UTF_8), true, false, true, null);
        return file;
    }

    /** Deletes the project with all that it holds. */
    public static void delete(IProject project) throws CoreException {
        project.delete(IResource.ALWAYS_DELETE_PROJECT_CONTENT | IResource.FORCE, null);
    }
}
