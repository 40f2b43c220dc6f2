/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IProject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.fit.follow.DeviceDrop;
import org.ferrule.ui.fit.follow.FollowingView;
import org.ferrule.ui.fit.follow.TurningSash;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;

/** Two to eight devices over each other along their length, followed as they are edited. */
public final class CompareView extends FollowingView {

    private static final int[] WEIGHTS = { 66, 34 };

    private CompareRequest request = CompareRequest.EMPTY;
    private Optional<IMemento> restored = Optional.empty();
    private Compared shown = new Compared(Optional.empty(), "", List.of());
    private CompareForm form;
    private ComparePlot plot;
    private CompareTables tables;
    private LatestWork work;

    @Override
    protected void restore(IMemento memento) {
        request = CompareRequest.restore(memento);
        restored = Optional.of(memento);
    }

    @Override
    protected void save(IMemento memento) {
        request.save(memento);
        form.saveDrawing(memento);
    }

    @Override
    protected void createForm(Composite parent) {
        form = new CompareForm(parent, this::ask, (bands, lumens) -> plot.draw(bands, lumens));
    }

    @Override
    protected void createBody(Composite parent) {
        parent.setLayout(new FillLayout());
        SashForm parts = TurningSash.in(parent);
        plot = new ComparePlot(parts, station -> tables.read(station));
        tables = new CompareTables(parts, station -> plot.canvas().putCursor(station));
        parts.setWeights(WEIGHTS);
        plot.canvas().ownedBy(this::owner);
        restored.ifPresent(form::restoreDrawing);
        plot.clear(Compared.FIRST);
        work = new LatestWork(parts, "Compare profiles");
        DeviceDrop.onto(parent.getParent(), this::add);
        addActions();
    }

    private void addActions() {
        Action across = new Action("Zoom diameters too", IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                plot.zoomAcross(isChecked());
            }
        };
        across.setToolTipText("Plus, minus and the wheel change the range of diameters as well as the length in sight");
        Action all = action("Fit all", plot::fitAll);
        all.setToolTipText("Show the whole length of all devices");
        IToolBarManager bar = getViewSite().getActionBars().getToolBarManager();
        bar.add(all);
        bar.add(new Separator());
        bar.add(across);
    }

    private static Action action(String text, Runnable work) {
        return new Action(text) {
            @Override
            public void run() {
                work.run();
            }
        };
    }

    /** Adds devices; those of another project take the place of all. */
    void add(List<DeviceReference> more) {
        if (more.isEmpty()) {
            return;
        }
        IProject project = more.get(0).library().getProject();
        boolean other = project().filter(project::equals).isEmpty();
        List<String> texts = more.stream().filter(device -> device.library().getProject().equals(project))
                .map(DeviceReference::text).toList();
        request = (other ? CompareRequest.EMPTY : request).withMore(texts);
        long left = texts.stream().filter(text -> !request.devices().contains(text)).count();
        getViewSite().getActionBars().getStatusLineManager().setMessage(left == 0 ? null
                : "Eight devices can be compared at most; left out: " + left);
        choose(project);
    }

    /** Compares anew with the devices as they stand now. */
    @Override
    protected void devicesChanged() {
        form.show(devices(), request);
        compare();
    }

    private void ask() {
        request = form.request();
        devicesChanged();
    }

    private void compare() {
        ProjectDevices now = devices();
        CompareRequest asked = request;
        work.start(() -> Compared.of(now, asked), this::show);
    }

    private void show(Compared next) {
        shown = next;
        redraw();
    }

    @Override
    protected void redraw() {
        tables.show(shown.comparison().orElse(null));
        shown.comparison().ifPresentOrElse(plot::show, () -> plot.clear(shown.problem()));
    }

    /** What is told below the plot when it leaves the program. */
    private PictureOwner owner() {
        PictureOwner owner = shown.comparison().isEmpty() ? PictureOwner.UNKNOWN : PictureOwner.of(shown.caption());
        return project().map(owner::in).orElse(owner);
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
}
