/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.document;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceRuleFactory;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.MultiRule;
import org.ferrule.ui.document.SaveConflictException;

/**
 * Replaces a file so that a crash leaves either the former or the new content, whole, and so that local history has the
 * former one. The workspace's own {@code setContents} keeps history but writes in place. Appending nothing keeps history
 * too and leaves every byte where it is; the content itself is then written beside the file and renamed over it.
 */
public final class SafeSave {

    /** Writes the whole content or throws and leaves the file as it was. */
    @FunctionalInterface
    public interface Writer {
        /** Replaces the content of the file. */
        void write(Path file, byte[] content) throws IOException;
    }

    private final Writer writer;

    /** Creates a save that writes with the given writer. */
    public SafeSave(Writer writer) {
        this.writer = writer;
    }

    /**
     * Replaces the content, or creates the file.
     *
     * @param expected what the file must hold now; nothing if whatever it holds may be replaced
     * @throws SaveConflictException if the file holds something else, or is gone; nothing is written then
     * @throws CoreException if the file cannot be written; it is as it was then
     */
    public void save(IFile file, Optional<ContentHash> expected, byte[] content, IProgressMonitor monitor)
            throws CoreException {
        file.getWorkspace().run(progress -> replace(file, expected, content), rule(file), IWorkspace.AVOID_UPDATE,
                monitor);
    }

    private void replace(IFile file, Optional<ContentHash> expected, byte[] content) throws CoreException {
        file.refreshLocal(IResource.DEPTH_ZERO, null);
        if (expected.isPresent() && !expected.equals(hash(file))) {
            throw new SaveConflictException(file);
        }
        if (file.exists()) {
            file.appendContents(InputStream.nullInputStream(), IResource.KEEP_HISTORY, null);
        }
        write(file, content);
        file.refreshLocal(IResource.DEPTH_ZERO, null);
        // two writes within the resolution of the file's time stamp look like one
        file.touch(null);
    }

    private void write(IFile file, byte[] content) throws CoreException {
        IPath location = file.getLocation();
        if (location == null) {
            createThroughWorkspace(file, content);
            return;
        }
        try {
            writer.write(location.toPath(), content);
        } catch (IOException e) {
            throw new CoreException(Status.error("Cannot save " + file.getFullPath() + ": " + e.getMessage(), e));
        }
    }

    /** A file that is not in the local file system cannot be renamed over: the workspace writes it as it can. */
    private static void createThroughWorkspace(IFile file, byte[] content) throws CoreException {
        if (file.exists()) {
            file.setContents(new ByteArrayInputStream(content), IResource.KEEP_HISTORY, null);
        } else {
            file.create(new ByteArrayInputStream(content), IResource.NONE, null);
        }
    }

    private static Optional<ContentHash> hash(IFile file) throws CoreException {
        if (!file.exists()) {
            return Optional.empty();
        }
        try (InputStream stream = file.getContents(true)) {
            return Optional.of(ContentHash.of(stream.readAllBytes()));
        } catch (IOException e) {
            throw new CoreException(Status.error("Cannot read " + file.getFullPath(), e));
        }
    }

    private static ISchedulingRule rule(IFile file) {
        IResourceRuleFactory rules = file.getWorkspace().getRuleFactory();
        return MultiRule.combine(new ISchedulingRule[] { rules.modifyRule(file), rules.refreshRule(file),
            rules.createRule(file) });
    }
}
