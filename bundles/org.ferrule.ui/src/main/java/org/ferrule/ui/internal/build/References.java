/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.ferrule.model.FileReferences;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;

/** Which documents refer to which. */
public final class References {

    private final DocumentRecords records;

    /** Creates the finder over the documents as they stand now. */
    public References(DocumentRecords records) {
        this.records = records;
    }

    /** Returns the documents of the project. */
    public static List<IFile> documents(IProject project) throws CoreException {
        List<IFile> found = new ArrayList<>();
        project.accept(proxy -> {
            if (proxy.getType() == IResource.FILE && DocumentFiles.kind(proxy.getName()).isPresent()) {
                found.add((IFile) proxy.requestResource());
            }
            return !proxy.isDerived();
        }, IResource.NONE);
        return found;
    }

    /** Returns the files with those documents of their projects that refer to one of them. */
    public Set<IFile> withDependents(Set<IFile> changed) throws CoreException {
        Set<IFile> all = new HashSet<>(changed);
        Set<IProject> projects = new HashSet<>();
        changed.forEach(file -> projects.add(file.getProject()));
        for (IProject project : projects) {
            for (IFile file : project.isAccessible() ? documents(project) : List.<IFile>of()) {
                if (refersToOne(file, changed)) {
                    all.add(file);
                }
            }
        }
        return all;
    }

    private boolean refersToOne(IFile file, Set<IFile> targets) throws CoreException {
        return !targets.contains(file) && file.exists()
                && records.of(file).document().stream().flatMap(document -> FileReferences.of(document).stream())
                        .anyMatch(reference -> DocumentFiles.resolve(file, reference).filter(targets::contains)
                                .isPresent());
    }
}
