/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IProject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.fit.answer.PairSelectionProvider;
import org.ferrule.ui.fit.follow.FollowingView;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.picture.PictureCanvas;

/**
 * Devices that lie in each other, any depth: each answered in what holds it, why, and a section along them all. What is
 * selected can be explained by the view of grounds.
 */
public final class StackView extends FollowingView {

    private static final String FIRST = "Add the devices from the outside to the inside: sheath, guide catheter, "
            + "extension, microcatheter, wire. Type in the field, or choose devices in the explorer and "
            + "\u201cPut into Each Other\u201d from their menu.";
    private static final String ONE = "Add what lies inside.";
    private static final String NOTHING_YET = "Nothing lies in anything yet.";
    private static final String NOT_ASKED = "Not asked yet: a field is not filled in.";
    private static final String NO_ANSWER = "The devices cannot lie like this.";
    private static final int[] WEIGHTS = { 31, 36, 33 };
    private static final double STANDS_BELOW = 1.1;

    private final PairSelectionProvider selection = new PairSelectionProvider();
    private Optional<StackRequest> pending = Optional.empty();
    private StackForm form;
    private StackExplanation explanation;
    private StackPicture picture;
    private LatestWork work;
    private AnsweredStack answered;

    @Override
    protected void restore(IMemento memento) {
        pending = Optional.of(StackRequest.restore(memento));
    }

    @Override
    protected void save(IMemento memento) {
        request().save(memento);
    }

    @Override
    protected void createParts(Composite parent) {
        SashForm parts = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        createFormArea(parts);
        createBody(parts);
        parts.setWeights(WEIGHTS);
        parts.addListener(SWT.Resize, event -> turn(parts));
        work = new LatestWork(parts, "Answer a stack");
        getSite().setSelectionProvider(selection);
    }

    private static void turn(SashForm parts) {
        Point size = parts.getSize();
        int orientation = size.x < STANDS_BELOW * size.y ? SWT.VERTICAL : SWT.HORIZONTAL;
        if (parts.getOrientation() != orientation) {
            parts.setOrientation(orientation);
        }
    }

    @Override
    protected void createForm(Composite parent) {
        form = new StackForm(parent, this::ask, index -> explain());
    }

    @Override
    protected void createBody(Composite parent) {
        explanation = new StackExplanation(parent, this::explain, this::choose);
        picture = new StackPicture(parent, getTitle(), this::choose);
    }

    @Override
    protected void devicesChanged() {
        form.show(devices(), request());
        pending = Optional.empty();
        ask();
    }

    @Override
    protected void redraw() {
        if (answered != null) {
            show(answered);
        }
    }

    private void ask() {
        StackRequest asked = form.request();
        Optional<String> problem = form.problem();
        if (problem.isPresent()) {
            work.forget();
            refuse(problem.get(), NOT_ASKED);
            return;
        }
        if (asked.entries().size() < 2) {
            work.forget();
            refuse(asked.entries().isEmpty() ? FIRST : ONE, NOTHING_YET);
            return;
        }
        ProjectDevices project = devices();
        work.start(() -> StackOutcome.of(project, asked), outcome -> outcome.answer()
                .ifPresentOrElse(this::show, () -> refuse(outcome.problem(), NO_ANSWER)));
    }

    private void refuse(String why, String drawn) {
        answered = null;
        form.show(Optional.empty());
        explanation.say(why);
        picture.clear(drawn);
        selection.select(Optional.empty());
    }

    private void show(AnsweredStack found) {
        answered = found;
        form.show(Optional.of(found));
        explain();
    }

    private void explain() {
        if (answered == null) {
            return;
        }
        int device = form.selected() < answered.devices().size() ? form.selected() : -1;
        explanation.show(answered, device);
        picture.show(answered, explanation.phase(), device);
        selection.select(device < 0 ? Optional.empty() : answered.pair(device, explanation.phase()));
    }

    /** Of several devices that lie beside each other the innermost is chosen. */
    private void choose(int level) {
        if (answered != null && level >= 0) {
            form.choose(answered.levels().lastIndexOf(level));
            explain();
        }
    }

    /** Asks a stack of a project, as if it had been filled in. */
    public void ask(IProject project, StackRequest request) {
        pending = Optional.of(request);
        choose(project);
    }

    /** Puts devices inside those that are there; of another project than theirs, instead of them. */
    void add(List<DeviceReference> more) {
        if (more.isEmpty()) {
            return;
        }
        IProject project = more.get(0).library().getProject();
        boolean other = project().filter(project::equals).isEmpty();
        StackRequest next = other ? StackRequest.EMPTY : request();
        for (DeviceReference device : more) {
            next = device.library().getProject().equals(project) ? next.withMore(StackEntry.of(device.text())) : next;
        }
        ask(project, next);
    }

    /** Returns the stack as it is filled in. */
    public StackRequest request() {
        return pending.orElseGet(form::request);
    }

    /** Returns the answer that is shown. */
    public Optional<AnsweredStack> answered() {
        return Optional.ofNullable(answered);
    }

    /** Returns the lines of the levels: verdict, what is left at worst, what lies in what. */
    public List<List<String>> levels() {
        return explanation.levels();
    }

    /** Returns what is said of what is chosen, or of the whole. */
    public String words() {
        return explanation.words();
    }

    /** Returns where it is drawn. */
    public PictureCanvas canvas() {
        return picture.canvas();
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }
}
