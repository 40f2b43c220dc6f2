/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;
import org.ferrule.chart.drawing.StackDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.picture.Caption;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.fit.answer.PairSelectionProvider;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.fit.passage.ProjectChoice;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.fit.passage.ProjectReading;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;
import org.ferrule.ui.preferences.UnitPreferences;

/**
 * Devices that lie in each other, any depth: each answered in what holds it, why, and a section along them all. What is
 * selected can be explained by the view of grounds.
 */
public final class StackView extends ViewPart {

    private static final String FIRST = "Add the devices from the outside to the inside: sheath, guide catheter, "
            + "extension, microcatheter, wire. Type in the field, or choose devices in the explorer and "
            + "\u201cPut into Each Other\u201d from their menu.";
    private static final String ONE = "Add what lies inside.";
    private static final String NOTHING_YET = "Nothing lies in anything yet.";
    private static final String NO_ANSWER = "The devices cannot lie like this.";
    private static final String PROJECT = "project";
    private static final int[] WEIGHTS = { 40, 25, 35 };
    private static final int FORM_WIDTH = 300;
    private static final double STANDS_BELOW = 1.1;

    private final PairSelectionProvider selection = new PairSelectionProvider();
    private final Consumer<IFile> follower = this::fileChanged;
    private final Runnable unitsChanged = this::unitsChanged;
    private StackRequest restored = StackRequest.EMPTY;
    private String restoredProject = "";
    private ProjectDevices devices = ProjectDevices.NONE;
    private ProjectChoice projects;
    private ProjectReading reading;
    private SashForm parts;
    private StackForm form;
    private StackText text;
    private PictureCanvas canvas;
    private LatestWork work;
    private AnsweredStack answered;

    @Override
    public void init(IViewSite site, IMemento memento) throws PartInitException {
        super.init(site, memento);
        if (memento != null) {
            restored = StackRequest.restore(memento);
            restoredProject = Optional.ofNullable(memento.getString(PROJECT)).orElse("");
        }
    }

    @Override
    public void saveState(IMemento memento) {
        request().save(memento);
        projects.chosen().ifPresent(project -> memento.putString(PROJECT, project.getName()));
    }

    @Override
    public void createPartControl(Composite parent) {
        parts = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        createForm();
        text = new StackText(parts, this::explain);
        canvas = new PictureCanvas(parts);
        canvas.ownedBy(this::owner);
        canvas.onClick(this::clicked);
        parts.setWeights(WEIGHTS);
        parts.addListener(SWT.Resize, event -> turn());
        work = new LatestWork(parts, "Answer a stack");
        reading = new ProjectReading(parent.getDisplay(), this::offer);
        getSite().setSelectionProvider(selection);
        Services.get(DocumentRecords.class).addListener(follower);
        Services.get(UnitPreferences.class).addListener(unitsChanged);
        projects.choose(restoredProject);
    }

    private void createForm() {
        ScrolledComposite scroller = new ScrolledComposite(parts, SWT.V_SCROLL);
        Composite left = new Composite(scroller, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(0, 4).applyTo(left);
        projects = new ProjectChoice(left, this::readProject);
        form = new StackForm(left, this::ask, index -> explain());
        scroller.setContent(left);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.setShowFocusedControl(true);
        scroller.setMinHeight(left.computeSize(FORM_WIDTH, SWT.DEFAULT).y);
    }

    private void turn() {
        Point size = parts.getSize();
        int orientation = size.x < STANDS_BELOW * size.y ? SWT.VERTICAL : SWT.HORIZONTAL;
        if (parts.getOrientation() != orientation) {
            parts.setOrientation(orientation);
        }
    }

    private PictureOwner owner() {
        if (answered == null) {
            return PictureOwner.UNKNOWN;
        }
        String revision = answered.rules().revision().isEmpty() ? "" : ", rev. " + answered.rules().revision();
        return PictureOwner.of(Caption.of(getTitle(), "Rule set: " + answered.rules().title() + revision,
                "The instructions for use and the judgement of the operator decide."));
    }

    private void readProject() {
        projects.chosen().ifPresentOrElse(reading::read, () -> offer(ProjectDevices.NONE));
    }

    private void fileChanged(IFile file) {
        later(() -> {
            projects.refresh();
            projects.chosen().filter(file.getProject()::equals).ifPresent(reading::read);
        });
    }

    private void unitsChanged() {
        later(() -> showAnswer(Optional.ofNullable(answered)));
    }

    private void later(Runnable job) {
        parts.getDisplay().asyncExec(() -> {
            if (!parts.isDisposed()) {
                job.run();
            }
        });
    }

    private void offer(ProjectDevices next) {
        if (parts.isDisposed()) {
            return;
        }
        devices = next;
        boolean isRestored = !restored.equals(StackRequest.EMPTY);
        form.show(devices, isRestored ? restored : form.request());
        restored = StackRequest.EMPTY;
        ask();
    }

    private void ask() {
        StackRequest asked = form.request();
        if (asked.entries().size() < 2) {
            work.forget();
            refuse(asked.entries().isEmpty() ? FIRST : ONE, NOTHING_YET);
            return;
        }
        ProjectDevices project = devices;
        work.start(() -> StackOutcome.of(project, asked), outcome -> outcome.answer()
                .ifPresentOrElse(found -> showAnswer(Optional.of(found)), () -> refuse(outcome.problem(), NO_ANSWER)));
    }

    private void refuse(String why, String drawn) {
        answered = null;
        form.show(Optional.empty());
        text.say(why);
        canvas.clear(drawn);
        selection.select(Optional.empty());
    }

    private void showAnswer(Optional<AnsweredStack> found) {
        if (found.isPresent()) {
            answered = found.get();
            form.show(found);
            explain();
        }
    }

    private void explain() {
        if (answered == null) {
            return;
        }
        int selected = form.selected();
        boolean known = selected >= 0 && selected < answered.devices().size();
        text.show(answered, known ? selected : -1);
        StackDrawing drawing = new StackDrawing(ReasonWords.english(ShownUnits.first()));
        AnsweredStack shown = answered;
        Phase phase = text.phase();
        canvas.draw((width, height) -> drawing.of(shown.answer(), phase, width, height));
        canvas.highlight(known ? "level:" + answered.levels().get(selected) : null);
        selection.select(known ? answered.pair(selected, phase) : Optional.empty());
    }

    private void clicked(List<String> groups) {
        groups.stream().filter(group -> group.startsWith("level:")).findFirst().ifPresent(group -> {
            form.choose(answered.levels().lastIndexOf(Integer.valueOf(group.substring("level:".length()))));
            explain();
        });
    }

    /** Asks a stack of a project, as if it had been filled in. */
    public void ask(IProject project, StackRequest request) {
        restored = request;
        projects.refresh();
        projects.choose(project.getName());
    }

    /** Puts devices inside those that are there; of another project than theirs, instead of them. */
    void add(List<DeviceReference> more) {
        if (more.isEmpty()) {
            return;
        }
        IProject project = more.get(0).library().getProject();
        boolean other = projects.chosen().filter(project::equals).isEmpty();
        StackRequest next = other ? StackRequest.EMPTY : request();
        for (DeviceReference device : more) {
            next = device.library().getProject().equals(project) ? next.withMore(StackEntry.of(device.text())) : next;
        }
        ask(project, next);
    }

    /** Returns the stack as it is filled in. */
    public StackRequest request() {
        return restored.equals(StackRequest.EMPTY) ? form.request() : restored;
    }

    /** Returns the answer that is shown. */
    public Optional<AnsweredStack> answered() {
        return Optional.ofNullable(answered);
    }

    /** Returns what is said of it. */
    public String words() {
        return text.words();
    }

    /** Returns where it is drawn. */
    public PictureCanvas canvas() {
        return canvas;
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }

    @Override
    public void dispose() {
        Services.get(DocumentRecords.class).removeListener(follower);
        Services.get(UnitPreferences.class).removeListener(unitsChanged);
        super.dispose();
    }
}
