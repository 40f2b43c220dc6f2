/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemBoard;

/** Finds the problems of documents anew and shows them: on the board for editors, as markers for everybody. */
public final class ProblemUpdate {

    private final DocumentRecords records;
    private final ProblemBoard board;
    private final ProblemFinder finder;
    private final MarkerWriter markers = new MarkerWriter();

    /** Creates an update that puts what it finds onto the board. */
    public ProblemUpdate(DocumentRecords records, ProblemBoard board) {
        this.records = records;
        this.board = board;
        this.finder = new ProblemFinder(records);
    }

    /** Looks at the changed files and at those that refer to them. */
    public void update(Set<IFile> changed, IProgressMonitor monitor) throws CoreException {
        Set<IFile> all = new HashSet<>(new References(records).withDependents(changed));
        all.removeIf(file -> !file.isAccessible());
        SubMonitor progress = SubMonitor.convert(monitor, "Checking documents", all.size());
        for (IFile file : all) {
            List<FoundProblem> found = finder.find(file, progress.split(1));
            board.put(file, found);
            markers.write(file, found, null);
        }
    }
}
