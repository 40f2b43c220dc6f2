/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.resources.IProject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.ferrule.ui.look.DropDown;

/** Which project's devices are asked about; takes no room while there is only one. */
public final class ProjectChoice {

    private static final int LEAST_WIDTH = 80;

    private final Composite control;
    private final DropDown list;
    private final Runnable changed;
    private List<IProject> projects = List.of();

    /** Creates the choice; whenever another project is chosen, something is run. */
    public ProjectChoice(Composite parent, Runnable changed) {
        this.changed = changed;
        control = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).spacing(8, 0).applyTo(control);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(control);
        new Label(control, SWT.NONE).setText("Project");
        list = new DropDown(control, LEAST_WIDTH).onChoice(changed);
    }

    /** Looks for projects anew; what is chosen stays chosen. */
    public void refresh() {
        List<IProject> found = Stream.of(PassageView.openProjects()).toList();
        if (!found.equals(projects)) {
            projects = found;
            select(list.text());
            ((GridData) control.getLayoutData()).exclude = projects.size() < 2;
            control.setVisible(projects.size() > 1);
            control.getParent().layout(true, true);
        }
    }

    /** Chooses a project by its name, or the first one. */
    public void choose(String name) {
        refresh();
        select(name);
        changed.run();
    }

    private void select(String name) {
        List<String> names = projects.stream().map(IProject::getName).toList();
        list.show(names, Math.max(0, names.indexOf(name)));
    }

    /** Returns the project that is chosen. */
    public Optional<IProject> chosen() {
        int index = list.chosen();
        return index >= 0 && index < projects.size() ? Optional.of(projects.get(index)) : Optional.empty();
    }
}
