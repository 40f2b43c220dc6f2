/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.util.Optional;

import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.IPath;
import org.ferrule.model.DocumentKind;

/** Which files are documents, and how documents refer to each other. */
public final class DocumentFiles {

    private DocumentFiles() {
    }

    /** Tells whether the file's name ends as that of a document does. */
    public static boolean isDocument(IResource resource) {
        return resource instanceof IFile && kind(resource.getName()).isPresent();
    }

    /** Returns the kind that the file's name stands for, or nothing if it is no document. */
    public static Optional<DocumentKind> kind(String fileName) {
        return DocumentKind.ofFileName(fileName);
    }

    /** Returns the name without the ending of its kind. */
    public static String baseName(IFile file) {
        String name = file.getName();
        return kind(name).map(kind -> name.substring(0, name.length() - kind.suffix().length())).orElse(name);
    }

    /**
     * Returns the file that a document refers to; it need not exist.
     *
     * @param from the document that refers
     * @param reference a relative path with {@code /}
     * @return nothing if the path leads out of the workspace
     */
    public static Optional<IFile> resolve(IFile from, String reference) {
        IPath path = from.getParent().getFullPath().append(reference);
        boolean inside = !reference.isBlank() && !path.isEmpty() && path.segmentCount() > 1
                && !"..".equals(path.segment(0));
        return inside ? Optional.of(from.getWorkspace().getRoot().getFile(path)) : Optional.empty();
    }

    /** Returns the relative path with {@code /} by which a document refers to another file. */
    public static String reference(IFile from, IFile to) {
        IContainer folder = from.getParent();
        return to.getFullPath().makeRelativeTo(folder.getFullPath()).toString();
    }
}
