/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.core.resources.ICommand;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IProjectNature;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;

/** Marks projects that hold documents, so that the builder checks them. */
public class DocumentNature implements IProjectNature {

    /** The id of the nature. */
    public static final String ID = "org.ferrule.ui.nature";

    private IProject project;

    /** Gives the project the nature if it has it not yet. */
    public static void addTo(IProject project, IProgressMonitor monitor) throws CoreException {
        if (!project.hasNature(ID)) {
            IProjectDescription description = project.getDescription();
            List<String> natures = new ArrayList<>(Arrays.asList(description.getNatureIds()));
            natures.add(ID);
            description.setNatureIds(natures.toArray(String[]::new));
            project.setDescription(description, monitor);
        }
    }

    @Override
    public void configure() throws CoreException {
        IProjectDescription description = project.getDescription();
        List<ICommand> commands = new ArrayList<>(Arrays.asList(description.getBuildSpec()));
        if (commands.stream().noneMatch(DocumentNature::isOurs)) {
            ICommand command = description.newCommand();
            command.setBuilderName(DocumentBuilder.ID);
            commands.add(command);
            write(description, commands);
        }
    }

    @Override
    public void deconfigure() throws CoreException {
        IProjectDescription description = project.getDescription();
        List<ICommand> commands = new ArrayList<>(Arrays.asList(description.getBuildSpec()));
        commands.removeIf(DocumentNature::isOurs);
        write(description, commands);
    }

    private void write(IProjectDescription description, List<ICommand> commands) throws CoreException {
        description.setBuildSpec(commands.toArray(ICommand[]::new));
        project.setDescription(description, null);
    }

    private static boolean isOurs(ICommand command) {
        return command.getBuilderName().equals(DocumentBuilder.ID);
    }

    @Override
    public IProject getProject() {
        return project;
    }

    @Override
    public void setProject(IProject project) {
        this.project = project;
    }
}
