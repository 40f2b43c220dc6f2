/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.io.IOException;
import java.nio.file.Path;

/** Brings every generated file of the repository up to date. */
public final class Main {

    private Main() {
    }

    /**
     * Generates and installs.
     *
     * @param args the root folder of the repository
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 1) {
            throw new IllegalArgumentException("expected one argument, the root folder of the repository");
        }
        Path root = Path.of(args[0]).toRealPath();
        for (GeneratedFolder folder : new Generation(root, root.resolve("releng/generator/target/generated")).run()) {
            folder.install();
        }
    }
}
