/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.fit.answer.AnswerPanel;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.answer.PairSelectionProvider;
import org.ferrule.ui.fit.later.LatestWork;

/** The daily question without a chart: what is in place, what is to be passed, and the answer with its drawing. */
public final class PassageView extends ViewPart {

    private static final String FIRST = "Choose what is in place and what is to be passed.";
    private static final String PROJECT = "project";
    private static final int FORM_WIDTH = 290;

    private final PairSelectionProvider selection = new PairSelectionProvider();
    private final PassageHistory history = new PassageHistory();
    private final Consumer<IFile> follower = this::fileChanged;
    private PassageQuestion restored = PassageQuestion.EMPTY;
    private ProjectDevices devices = ProjectDevices.NONE;
    private ProjectReading reading;
    private ProjectChoice projects;
    private PassageForm form;
    private AnswerPanel panel;
    private LatestWork work;
    private Display display;
    private String restoredProject = "";

    @Override
    public void init(IViewSite site, IMemento memento) throws PartInitException {
        super.init(site, memento);
        if (memento != null) {
            restored = PassageQuestion.restore(memento);
            history.restore(memento);
            restoredProject = Optional.ofNullable(memento.getString(PROJECT)).orElse("");
        }
    }

    @Override
    public void saveState(IMemento memento) {
        form.question().save(memento);
        history.save(memento);
        projects.chosen().ifPresent(project -> memento.putString(PROJECT, project.getName()));
    }

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(parent);
        ScrolledComposite scroller = new ScrolledComposite(parent, SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(false, true).hint(FORM_WIDTH, 80).applyTo(scroller);
        Composite left = new Composite(scroller, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(left);
        scroller.setContent(left);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        projects = new ProjectChoice(left, this::readProject);
        form = new PassageForm(left, this::ask,
                () -> scroller.setMinHeight(left.computeSize(FORM_WIDTH, SWT.DEFAULT).y));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(form.control());
        scroller.setMinHeight(left.computeSize(FORM_WIDTH, SWT.DEFAULT).y);
        panel = new AnswerPanel(parent);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(panel.control());
        panel.clear(FIRST);
        work = new LatestWork(panel.control(), "Answer one passage");
        reading = new ProjectReading(display, this::offer);
        getSite().setSelectionProvider(selection);
        addActions();
        Services.get(DocumentRecords.class).addListener(follower);
        projects.choose(restoredProject);
    }

    private void addActions() {
        IToolBarManager bar = getViewSite().getActionBars().getToolBarManager();
        Action swap = new Action("Swap") {
            @Override
            public void run() {
                form.show(form.question().swapped());
                ask(form.question());
            }
        };
        swap.setToolTipText("Put the two devices in each other's place");
        bar.add(swap);
        bar.add(new Separator());
        bar.add(new HistoryMenu(history, () -> devices, question -> {
            form.show(question);
            ask(form.question());
        }));
    }

    private void readProject() {
        projects.chosen().ifPresentOrElse(reading::read, () -> offer(ProjectDevices.NONE));
    }

    private void fileChanged(IFile file) {
        display.asyncExec(() -> {
            if (!panel.control().isDisposed()) {
                projects.refresh();
                projects.chosen().filter(file.getProject()::equals).ifPresent(reading::read);
            }
        });
    }

    /** Asks anew with the devices as they stand now. */
    private void offer(ProjectDevices next) {
        if (panel.control().isDisposed()) {
            return;
        }
        devices = next;
        form.offer(devices);
        if (!restored.equals(PassageQuestion.EMPTY)) {
            form.show(restored);
            restored = PassageQuestion.EMPTY;
        }
        ask(form.question());
    }

    private void ask(PassageQuestion question) {
        Optional<String> problem = form.problem();
        if (problem.isPresent() || !question.isComplete()) {
            work.forget();
            panel.clear(problem.orElse(FIRST));
            return;
        }
        PassageAnswerer answerer = new PassageAnswerer(devices, Extensions.ofPlatform().checks());
        work.start(() -> Answered.by(answerer, question), answered -> show(question, answered));
    }

    private void show(PassageQuestion question, Answered answered) {
        answered.pair().ifPresentOrElse(pair -> {
            panel.show(pair);
            selection.select(panel.shown());
            history.add(question);
        }, () -> panel.clear(answered.problem()));
    }

    /** What came of a question: the pair with its answer, or what stands in the way. */
    private record Answered(Optional<AskedPair> pair, String problem) {

        static Answered by(PassageAnswerer answerer, PassageQuestion question) {
            try {
                return new Answered(Optional.of(answerer.answer(question)), "");
            } catch (ReferenceException | RuleSetException | IllegalArgumentException e) {
                return new Answered(Optional.empty(), e.getMessage());
            }
        }
    }

    /** Asks a question of a project, as if it had been filled in. */
    public void ask(IProject project, PassageQuestion question) {
        restored = question;
        projects.refresh();
        projects.choose(project.getName());
    }

    /** Returns where the answer is shown. */
    public AnswerPanel panel() {
        return panel;
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }

    @Override
    public void dispose() {
        Services.get(DocumentRecords.class).removeListener(follower);
        super.dispose();
    }

    /** Returns the projects whose devices can be asked about. */
    static IProject[] openProjects() {
        return Stream.of(ResourcesPlugin.getWorkspace().getRoot().getProjects())
                .filter(IProject::isAccessible).toArray(IProject[]::new);
    }
}
