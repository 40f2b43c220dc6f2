/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** One run of the command line, with what it printed. */
record Run(int exitCode, String out, String err) {

    static Run of(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = arguments[i].toString();
        }
        int exitCode = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Run(exitCode, out.toString(), err.toString());
    }

    /** The demo documents that ship. */
    static Path demo() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("seeds"))) {
            folder = folder.getParent();
        }
        return folder.resolve("seeds/demo");
    }

    static Path demo(String file) {
        return demo().resolve(file);
    }
}
