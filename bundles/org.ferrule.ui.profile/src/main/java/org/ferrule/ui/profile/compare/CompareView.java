/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.ViewPart;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.fit.passage.ProjectChoice;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.fit.passage.ProjectReading;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;
import org.ferrule.ui.preferences.UnitPreferences;

/** Two to eight devices over each other along their length, followed as they are edited. */
public final class CompareView extends ViewPart {

    private static final String PROJECT = "project";
    private static final int FORM_WIDTH = 270;
    private static final int[] WEIGHTS = { 66, 34 };
    private static final double BESIDE_ABOVE = 2.4;

    private final Consumer<IFile> follower = this::fileChanged;
    private final Runnable unitsChanged = this::unitsChanged;
    private CompareRequest request = CompareRequest.EMPTY;
    private Optional<IMemento> restored = Optional.empty();
    private String restoredProject = "";
    private ProjectDevices devices = ProjectDevices.NONE;
    private Compared shown = new Compared(Optional.empty(), "", List.of());
    private ProjectChoice projects;
    private ProjectReading reading;
    private CompareForm form;
    private ComparePlot plot;
    private CompareTables tables;
    private LatestWork work;
    private SashForm parts;

    @Override
    public void init(IViewSite site, IMemento memento) throws PartInitException {
        super.init(site, memento);
        if (memento != null) {
            request = CompareRequest.restore(memento);
            restored = Optional.of(memento);
            restoredProject = Optional.ofNullable(memento.getString(PROJECT)).orElse("");
        }
    }

    @Override
    public void saveState(IMemento memento) {
        request.save(memento);
        form.saveDrawing(memento);
        projects.chosen().ifPresent(project -> memento.putString(PROJECT, project.getName()));
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(parent);
        createForm(parent);
        parts = new SashForm(parent, SWT.VERTICAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(parts);
        plot = new ComparePlot(parts, station -> tables.read(station));
        tables = new CompareTables(parts, station -> plot.canvas().putCursor(station));
        parts.setWeights(WEIGHTS);
        parts.addListener(SWT.Resize, event -> turn());
        plot.canvas().ownedBy(this::owner);
        restored.ifPresent(form::restoreDrawing);
        plot.clear(Compared.FIRST);
        work = new LatestWork(parts, "Compare profiles");
        reading = new ProjectReading(parent.getDisplay(), this::offer);
        addActions();
        Services.get(DocumentRecords.class).addListener(follower);
        Services.get(UnitPreferences.class).addListener(unitsChanged);
        projects.choose(restoredProject);
    }

    private void createForm(Composite parent) {
        ScrolledComposite scroller = new ScrolledComposite(parent, SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(false, true).hint(FORM_WIDTH, 80).applyTo(scroller);
        Composite left = new Composite(scroller, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 4).applyTo(left);
        projects = new ProjectChoice(left, this::readProject);
        form = new CompareForm(left, this::ask, (bands, lumens) -> plot.draw(bands, lumens));
        scroller.setContent(left);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.setShowFocusedControl(true);
        scroller.setMinHeight(left.computeSize(FORM_WIDTH, SWT.DEFAULT).y);
    }

    /** The tables lie below the plot, or beside it where there is little height. */
    private void turn() {
        Point size = parts.getSize();
        int orientation = size.x > BESIDE_ABOVE * size.y ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (parts.getOrientation() != orientation) {
            parts.setOrientation(orientation);
        }
    }

    private void addActions() {
        Action across = new Action("Zoom Diameters Too", IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                plot.zoomAcross(isChecked());
            }
        };
        across.setToolTipText("Plus, minus and the wheel change the range of diameters as well as the length in sight");
        Action all = new Action("Fit All") {
            @Override
            public void run() {
                plot.fitAll();
            }
        };
        all.setToolTipText("Show the whole length of all devices");
        getViewSite().getActionBars().getToolBarManager().add(all);
        getViewSite().getActionBars().getToolBarManager().add(across);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(), new Action() {
            @Override
            public void run() {
                tables.copy();
            }
        });
    }

    /** Adds devices; those of another project take the place of all. */
    void add(List<DeviceReference> more) {
        if (more.isEmpty()) {
            return;
        }
        IProject project = more.get(0).library().getProject();
        boolean other = projects.chosen().filter(project::equals).isEmpty();
        List<String> texts = more.stream().filter(device -> device.library().getProject().equals(project))
                .map(DeviceReference::text).toList();
        request = (other ? CompareRequest.EMPTY : request).withMore(texts);
        long left = texts.stream().filter(text -> !request.devices().contains(text)).count();
        getViewSite().getActionBars().getStatusLineManager().setMessage(left == 0 ? null
                : "Eight devices can be compared at most; left out: " + left);
        projects.refresh();
        projects.choose(project.getName());
    }

    private void readProject() {
        projects.chosen().ifPresentOrElse(reading::read, () -> offer(ProjectDevices.NONE));
    }

    private void fileChanged(IFile file) {
        parts.getDisplay().asyncExec(() -> {
            if (!parts.isDisposed()) {
                projects.refresh();
                projects.chosen().filter(file.getProject()::equals).ifPresent(reading::read);
            }
        });
    }

    private void unitsChanged() {
        parts.getDisplay().asyncExec(() -> {
            if (!parts.isDisposed()) {
                show(shown);
            }
        });
    }

    /** Compares anew with the devices as they stand now. */
    private void offer(ProjectDevices next) {
        if (!parts.isDisposed()) {
            devices = next;
            form.show(devices, request);
            compare();
        }
    }

    private void ask() {
        request = form.request();
        form.show(devices, request);
        compare();
    }

    private void compare() {
        ProjectDevices now = devices;
        CompareRequest asked = request;
        work.start(() -> Compared.of(now, asked), this::show);
    }

    private void show(Compared next) {
        shown = next;
        tables.show(next.comparison().orElse(null));
        next.comparison().ifPresentOrElse(plot::show, () -> plot.clear(next.problem()));
    }

    /** What is told below the plot when it leaves the program. */
    private PictureOwner owner() {
        PictureOwner owner = shown.comparison().isEmpty() ? PictureOwner.UNKNOWN : PictureOwner.of(shown.caption());
        return projects.chosen().map(owner::in).orElse(owner);
    }

    /** Returns what is compared. */
    public Optional<ProfileComparison> comparison() {
        return shown.comparison();
    }

    /** Returns where the plot is shown. */
    public PictureCanvas canvas() {
        return plot.canvas();
    }

    /** Returns the tables. */
    public CompareTables tables() {
        return tables;
    }

    /** Returns the length in sight, in millimetres; 0 when there is no plot. */
    public double lengthInSightMm() {
        return plot.view().map(view -> view.length().mm()).orElse(0.0);
    }

    @Override
    public void setFocus() {
        plot.canvas().setFocus();
    }

    @Override
    public void dispose() {
        Services.get(DocumentRecords.class).removeListener(follower);
        Services.get(UnitPreferences.class).removeListener(unitsChanged);
        super.dispose();
    }
}
