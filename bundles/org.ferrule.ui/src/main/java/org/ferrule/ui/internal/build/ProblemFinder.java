/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Platform;
import org.ferrule.io.json.TextRegion;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemRequest;
import org.ferrule.ui.problem.ProblemSource;

/** Asks every contributed source for the problems of a document. */
public final class ProblemFinder {

    private static final String POINT = "org.ferrule.ui.problemSources";
    private static final TextRegion BEGINNING = new TextRegion(1, 1, 0, 0);

    private final DocumentRecords records;
    private List<ProblemSource> sources;

    /** Creates a finder over the documents as they stand. */
    public ProblemFinder(DocumentRecords records) {
        this.records = records;
    }

    /**
     * Returns the problems of the file as it stands, in the order of the text.
     *
     * @throws CoreException if the file cannot be read
     */
    public List<FoundProblem> find(IFile file, IProgressMonitor monitor) throws CoreException {
        ProblemRequest request = new ProblemRequest(records.of(file), records);
        List<FoundProblem> found = new ArrayList<>();
        for (ProblemSource source : sources()) {
            found.addAll(ask(source, request, monitor));
        }
        found.sort(Comparator.comparingInt(problem -> problem.region().offset()));
        return found;
    }

    /** A source that fails must not hide what the others have found. */
    private static List<FoundProblem> ask(ProblemSource source, ProblemRequest request, IProgressMonitor monitor) {
        try {
            return source.find(request, monitor);
        } catch (OperationCanceledException e) {
            throw e;
        } catch (CoreException | RuntimeException | LinkageError e) {
            ILog.of(ProblemFinder.class).error(source.getClass().getName() + " has failed", e);
            return List.of(new FoundProblem(Severity.ERROR, "NOT_CHECKED", "Not checked: " + e.getMessage(), "",
                    BEGINNING, "", "", ""));
        }
    }

    private synchronized List<ProblemSource> sources() throws CoreException {
        if (sources == null) {
            List<ProblemSource> made = new ArrayList<>();
            for (IConfigurationElement element : Platform.getExtensionRegistry().getConfigurationElementsFor(POINT)) {
                made.add((ProblemSource) element.createExecutableExtension("class"));
            }
            sources = List.copyOf(made);
        }
        return sources;
    }
}
