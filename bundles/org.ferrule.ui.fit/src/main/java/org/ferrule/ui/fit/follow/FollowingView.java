/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.follow;

import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.fit.passage.ProjectChoice;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.fit.passage.ProjectReading;
import org.ferrule.ui.preferences.UnitPreferences;

/** A view of the devices of one project, with a form, that follows every edit and remembers its project. */
public abstract class FollowingView extends ViewPart {

    private static final String PROJECT = "project";
    private static final int FORM_WIDTH = 270;

    private final Consumer<IFile> follower = this::fileChanged;
    private final Runnable unitsChanged = this::unitsChanged;
    private ProjectDevices devices = ProjectDevices.NONE;
    private String restoredProject = "";
    private ProjectChoice projects;
    private ProjectReading reading;
    private Composite whole;

    @Override
    public void init(IViewSite site, IMemento memento) throws PartInitException {
        super.init(site, memento);
        if (memento != null) {
            restoredProject = Optional.ofNullable(memento.getString(PROJECT)).orElse("");
            restore(memento);
        }
    }

    @Override
    public void saveState(IMemento memento) {
        project().ifPresent(project -> memento.putString(PROJECT, project.getName()));
        save(memento);
    }

    /** Takes up what was saved. */
    protected abstract void restore(IMemento memento);

    /** Saves what is asked for. */
    protected abstract void save(IMemento memento);

    @Override
    public void createPartControl(Composite parent) {
        whole = parent;
        createParts(parent);
        reading = new ProjectReading(parent.getDisplay(), this::offer);
        Services.get(DocumentRecords.class).addListener(follower);
        Services.get(UnitPreferences.class).addListener(unitsChanged);
        projects.choose(restoredProject);
    }

    /** Creates the form to the left and the body beside it; a subclass may lay them out otherwise. */
    protected void createParts(Composite parent) {
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(parent);
        GridDataFactory.fillDefaults().grab(false, true).hint(FORM_WIDTH, 80).applyTo(createFormArea(parent));
        Composite body = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        createBody(body);
    }

    /** Creates the form below the choice of the project, scrolled where there is little height. */
    protected final Composite createFormArea(Composite parent) {
        ScrolledComposite scroller = new ScrolledComposite(parent, SWT.V_SCROLL);
        Composite form = new Composite(scroller, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 4).applyTo(form);
        projects = new ProjectChoice(form, this::readProject);
        createForm(form);
        scroller.setContent(form);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.setShowFocusedControl(true);
        scroller.setMinHeight(form.computeSize(FORM_WIDTH, SWT.DEFAULT).y);
        return scroller;
    }

    /** Creates what is filled in, in a grid of one column. */
    protected abstract void createForm(Composite parent);

    /** Creates what is shown; sets its own layout. */
    protected abstract void createBody(Composite parent);

    /** Shows what is asked for with the devices as they stand now. */
    protected abstract void devicesChanged();

    /** Shows the same in other units. */
    protected abstract void redraw();

    /** Returns the devices as they stand. */
    protected final ProjectDevices devices() {
        return devices;
    }

    /** Returns the project that is chosen. */
    protected final Optional<IProject> project() {
        return projects.chosen();
    }

    /** Chooses a project, and reads it anew. */
    protected final void choose(IProject project) {
        projects.refresh();
        projects.choose(project.getName());
    }

    private void readProject() {
        project().ifPresentOrElse(reading::read, () -> offer(ProjectDevices.NONE));
    }

    private void offer(ProjectDevices next) {
        if (!whole.isDisposed()) {
            devices = next;
            devicesChanged();
        }
    }

    private void fileChanged(IFile file) {
        later(() -> {
            projects.refresh();
            project().filter(file.getProject()::equals).ifPresent(reading::read);
        });
    }

    private void unitsChanged() {
        later(this::redraw);
    }

    private void later(Runnable work) {
        whole.getDisplay().asyncExec(() -> {
            if (!whole.isDisposed()) {
                work.run();
            }
        });
    }

    @Override
    public void dispose() {
        Services.get(DocumentRecords.class).removeListener(follower);
        Services.get(UnitPreferences.class).removeListener(unitsChanged);
        super.dispose();
    }
}
