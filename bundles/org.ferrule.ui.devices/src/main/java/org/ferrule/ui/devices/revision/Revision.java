/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.io.IOException;
import java.io.InputStream;
import java.text.DateFormat;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFileState;
import org.eclipse.core.resources.IStorage;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.io.json.ReadResult;
import org.ferrule.model.DeviceLibrary;

/**
 * Another revision of a library, to compare with.
 *
 * @param title what it is called on the screen
 * @param storage where its bytes are
 */
record Revision(String title, IStorage storage) {

    /** Returns the revisions of a file: what is on disk, and what local history has kept, newest first. */
    static List<Revision> of(IFile file) throws CoreException {
        List<Revision> revisions = new ArrayList<>();
        if (file.exists()) {
            revisions.add(new Revision("the file as saved", file));
        }
        Stream.of(file.getHistory(new NullProgressMonitor())).map(Revision::kept).forEach(revisions::add);
        return revisions;
    }

    private static Revision kept(IFileState state) {
        DateFormat format = DateFormat.getDateTimeInstance(DateFormat.MEDIUM, DateFormat.MEDIUM, Locale.UK);
        return new Revision("local history, " + format.format(new Date(state.getModificationTime())), state);
    }

    /**
     * Reads the library. For every thread.
     *
     * @throws CoreException if it cannot be read, or is no library
     */
    DeviceLibrary read() throws CoreException {
        try (InputStream stream = storage.getContents()) {
            ReadResult result = new JsonDocuments().read(stream.readAllBytes(), storage.getName());
            return result.document().filter(DeviceLibrary.class::isInstance).map(DeviceLibrary.class::cast)
                    .orElseThrow(() -> new CoreException(
                            Status.error(storage.getName() + " is no device library that can be read")));
        } catch (IOException e) {
            throw new CoreException(Status.error("Cannot read " + storage.getName(), e));
        }
    }
}
