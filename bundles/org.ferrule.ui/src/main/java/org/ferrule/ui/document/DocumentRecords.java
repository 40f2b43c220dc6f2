/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.io.IOException;
import java.io.InputStream;
import java.lang.ref.SoftReference;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.ferrule.io.json.JsonDocuments;

/**
 * What the documents of the workspace say now: the unsaved state of an open editor where there is one, else the file.
 * Read when asked for, kept until the file changes or memory becomes scarce. Safe for every thread.
 */
public final class DocumentRecords {

    /** What was read of a file; it gives way where memory becomes scarce, and is read again. */
    private record Kept(long stamp, SoftReference<DocumentRecord> record) {
    }

    private final JsonDocuments documents = new JsonDocuments();
    private final Map<IFile, Kept> kept = new ConcurrentHashMap<>();
    private final Map<IFile, DocumentRecord> live = new ConcurrentHashMap<>();
    private final List<Consumer<IFile>> listeners = new CopyOnWriteArrayList<>();

    /**
     * Returns what the file says now.
     *
     * @throws CoreException if the file is not there or cannot be read
     */
    public DocumentRecord of(IFile file) throws CoreException {
        DocumentRecord unsaved = live.get(file);
        return unsaved != null ? unsaved : onDisk(file);
    }

    /**
     * Returns what the file on disk says, whatever an editor holds.
     *
     * @throws CoreException if the file is not there or cannot be read
     */
    public DocumentRecord onDisk(IFile file) throws CoreException {
        long stamp = file.getModificationStamp();
        Kept known = kept.get(file);
        DocumentRecord record = known != null && known.stamp == stamp && stamp != IResource.NULL_STAMP
                ? known.record.get() : null;
        if (record == null) {
            record = new DocumentRecord(file, documents.read(bytes(file), file.getName()), false);
            kept.put(file, new Kept(stamp, new SoftReference<>(record)));
        }
        return record;
    }

    /** Takes the unsaved state of an editor, as the bytes that saving it would write. */
    public void putLive(IFile file, byte[] content) {
        live.put(file, new DocumentRecord(file, documents.read(content, file.getName()), true));
        changed(file);
    }

    /** Forgets the unsaved state of an editor: the file on disk counts again. */
    public void dropLive(IFile file) {
        if (live.remove(file) != null) {
            changed(file);
        }
    }

    /** Tells the listeners that the file on disk has changed or is gone. */
    public void changed(IFile file) {
        if (!file.exists()) {
            kept.remove(file);
        }
        listeners.forEach(listener -> listener.accept(file));
    }

    /** Adds a listener that is told, on any thread, which file says something new. */
    public void addListener(Consumer<IFile> listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(Consumer<IFile> listener) {
        listeners.remove(listener);
    }

    /**
     * Returns the bytes of the file on disk.
     *
     * @throws CoreException if the file is not there or cannot be read
     */
    static byte[] bytes(IFile file) throws CoreException {
        try (InputStream stream = file.getContents(true)) {
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new CoreException(Status.error("Cannot read " + file.getFullPath(), e));
        }
    }
}
