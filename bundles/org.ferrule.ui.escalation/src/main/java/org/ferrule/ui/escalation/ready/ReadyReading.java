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
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.RuleSet;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;
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
                records.of(file).document().filter(CaseDocument.class::isInstance)
                        .ifPresent(document -> cases.add(plan(file, (CaseDocument) document)));
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
        for (IProject project : org.eclipse.core.resources.ResourcesPlugin.getWorkspace().getRoot().getProjects()) {
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

    private ReadyCase plan(IFile file, CaseDocument document) {
        String title = (document.getDay() == null ? "" : document.getDay() + "  ")
                + (document.getTitle() == null ? file.getName() : document.getTitle());
        Optional<TechniqueLibrary> techniques = find(file, document.getTechniques(), TechniqueLibrary.class);
        Optional<RuleSet> rules = find(file, document.getRules(), RuleSet.class);
        if (techniques.isEmpty() || rules.isEmpty()) {
            return problem(file, title, "its techniques or its rule set cannot be opened");
        }
        Optional<ShelfDocument> shelf = find(file, document.getShelf(), ShelfDocument.class);
        List<LibraryReader> libraries = document.getLibraries().stream()
                .flatMap(path -> find(file, path, DeviceLibrary.class).map(l -> new LibraryReader(path, l)).stream())
                .toList();
        try {
            AssembledCase assembled = new OpenCase(document, libraries, rules.get(), techniques.get(), shelf)
                    .assemble(Extensions.ofPlatform().checks(), LocalDate.now());
            Plan plan = assembled.plan();
            return new ReadyCase(file, title, Optional.of(plan), Optional.of(PlanWords.english(assembled.ladder(),
                    assembled.instruments(), assembled.stock().shelf(), ShownUnits.first(),
                    shelf.map(ShelfDocument::getCurrency).orElse(""))), "");
        } catch (RuleSetException | IllegalArgumentException e) {
            return problem(file, title, e.getMessage());
        }
    }

    private static ReadyCase problem(IFile file, String title, String problem) {
        return new ReadyCase(file, title, Optional.empty(), Optional.empty(), problem);
    }

    private <D extends Document> Optional<D> find(IFile from, String path, Class<D> type) {
        try {
            Optional<IFile> file = path == null ? Optional.empty()
                    : DocumentFiles.resolve(from, path).filter(IFile::exists);
            return file.isEmpty() ? Optional.empty()
                    : records.of(file.get()).document().filter(type::isInstance).map(type::cast);
        } catch (CoreException e) {
            org.eclipse.core.runtime.ILog.of(ReadyReading.class).log(e.getStatus());
            return Optional.empty();
        }
    }
}
