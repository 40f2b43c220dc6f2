/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.page;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Says why a file could not be written: what the system says of it is often nothing but a path. */
public final class WriteFailure {

    private WriteFailure() {
    }

    /** Returns the reason, without a full stop. */
    public static String words(Path target, IOException failure) {
        Path folder = target.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            return "there is no folder " + folder;
        }
        if (Files.isDirectory(target)) {
            return target + " is a folder";
        }
        if (failure instanceof AccessDeniedException) {
            return Files.exists(target) && !Files.isWritable(target) ? target + " is read-only"
                    : "nothing may be written into the folder " + folder;
        }
        return failure instanceof FileSystemException system && system.getReason() != null
                ? target + ": " + system.getReason() : failure.getMessage();
    }
}
