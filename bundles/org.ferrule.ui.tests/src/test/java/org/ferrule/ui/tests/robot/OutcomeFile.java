/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The file by which a workbench in another process tells what has come of its task. */
public final class OutcomeFile {

    private OutcomeFile() {
    }

    /**
     * Writes the file at once, so that nobody reads half of it.
     *
     * @param property the system property that names the file
     */
    public static void write(String property, String outcome) {
        try {
            Path file = Path.of(System.getProperty(property));
            Path whole = file.resolveSibling(file.getFileName() + ".part");
            Files.writeString(whole, outcome);
            Files.move(whole, file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
