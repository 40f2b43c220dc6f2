/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.FileURIHandlerImpl;

/** Lets EMF resources write files by {@link AtomicFiles}: nothing happens to a file before its stream is closed. */
final class AtomicFileHandler extends FileURIHandlerImpl {

    @Override
    public OutputStream createOutputStream(URI uri, Map<?, ?> options) {
        return new ByteArrayOutputStream() {
            @Override
            public void close() throws IOException {
                // A resource that failed before it wrote anything closes its stream too.
                if (size() > 0) {
                    AtomicFiles.write(Path.of(uri.toFileString()), toByteArray());
                    reset();
                }
            }
        };
    }
}
