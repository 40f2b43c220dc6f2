/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.io.IOException;
import java.util.Optional;

/** Where the documents of a case lie today. */
@FunctionalInterface
public interface StoredFiles {

    /**
     * The bytes of a file; nothing where there is none.
     *
     * @param path relative to the case, with /
     * @throws IOException if it is there and cannot be read
     */
    Optional<byte[]> bytes(String path) throws IOException;
}
