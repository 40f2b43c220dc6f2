/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.signoff;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.ferrule.engine.document.DocumentHashes;
import org.ferrule.ui.document.DocumentFiles;

/** The fingerprints of the documents of a chart as they are stored. Read again only when a file has changed. */
public final class StoredHashes {

    private record Known(long stamp, String sha256) {
    }

    private final Map<IFile, Known> known = new HashMap<>();
    private final IFile chart;

    /** Finds documents from a chart. */
    public StoredHashes(IFile chart) {
        this.chart = chart;
    }

    /**
     * Returns the SHA-256 of documents by path; without those that are missing. For every thread.
     *
     * @throws CoreException if a file cannot be read
     */
    public synchronized Map<String, String> of(List<String> paths) throws CoreException {
        Map<String, String> hashes = new HashMap<>();
        for (String path : paths) {
            Optional<IFile> file = file(path);
            if (file.isPresent()) {
                hashes.put(path, hash(file.get()));
            }
        }
        return hashes;
    }

    private Optional<IFile> file(String path) {
        return DocumentFiles.resolve(chart, path).filter(IFile::exists);
    }

    private String hash(IFile file) throws CoreException {
        long stamp = file.getModificationStamp();
        Known before = known.get(file);
        if (before == null || before.stamp != stamp) {
            known.put(file, new Known(stamp, DocumentHashes.sha256(bytes(file))));
        }
        return known.get(file).sha256;
    }

    /** The bytes of a file of the workspace. */
    static byte[] bytes(IFile file) throws CoreException {
        try (InputStream stream = file.getContents(true)) {
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new CoreException(Status.error("Cannot read " + file.getFullPath(), e));
        }
    }
}
