/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ready;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DocumentKind;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.escalation.live.CaseReading;
import org.ferrule.ui.fit.answer.ShownUnits;

/** Plans all cases of the projects that are open, as their editors or files say them now. */
final class ReadyReading extends Job {

    private static final int DELAY_MS = 150;

    private final DocumentRecords records = Services.get(DocumentRecords.class);
    private final Display display;
    private final Consumer<List<ReadyCase>> listener;

    ReadyReading(Display display, Consumer<List<ReadyCase>> listener) {
        super("Plan the cases of the projects");
        setSystem(true);
        this.display = display;
        this.listener = listener;
    }

    void soon() {
        schedule(DELAY_MS);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            List<ReadyCase> cases = new ArrayList<>();
            for (IFile file : files()) {
                if (monitor.isCanceled()) {
                    return Status.CANCEL_STATUS;
                }
                if (records.of(file).document().orElse(null) instanceof CaseDocument document) {
                    cases.add(plan(file, document));
                }
            }
            cases.sort(Comparator.comparing(ReadyCase::title));
            if (!display.isDisposed()) {
                display.asyncExec(() -> listener.accept(cases));
            }
            return Status.OK_STATUS;
        } catch (CoreException e) {
            return e.getStatus();
        }
    }

    private static List<IFile> files() throws CoreException {
        List<IFile> files = new ArrayList<>();
        for (IProject project : ResourcesPlugin.getWorkspace().getRoot().getProjects()) {
            if (project.isAccessible()) {
                project.accept((IResource resource) -> {
                    if (resource instanceof IFile file
                            && DocumentFiles.kind(file.getName()).filter(DocumentKind.CASE::equals).isPresent()) {
                        files.add(file);
                    }
                    return true;
                });
            }
        }
        return files;
    }

    private ReadyCase plan(IFile file, CaseDocument document) throws CoreException {
        String title = (document.getDay() == null ? "" : document.getDay() + "  ")
                + (document.getTitle() == null ? file.getName() : document.getTitle());
        CaseReading reading = new CaseReading(records, file, document);
        if (reading.open().isEmpty()) {
            return problem(file, title, reading.missing().get(0).message());
        }
        try {
            AssembledCase assembled = reading.open().get().assemble(Extensions.ofPlatform().checks(), LocalDate.now());
            return new ReadyCase(file, title, Optional.of(assembled.plan()), Optional.of(words(assembled)), "");
        } catch (RuleSetException | IllegalArgumentException e) {
            return problem(file, title, e.getMessage());
        }
    }

    private static PlanWords words(AssembledCase assembled) {
        return PlanWords.english(assembled.ladder(), assembled.instruments(), assembled.stock().shelf(),
                ShownUnits.first(), "");
    }

    private static ReadyCase problem(IFile file, String title, String problem) {
        return new ReadyCase(file, title, Optional.empty(), Optional.empty(), problem);
    }
}
