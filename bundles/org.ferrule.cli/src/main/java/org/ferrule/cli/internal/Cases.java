/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.model.DocumentKind;

/** Cases that were named on the command line. */
public final class Cases {
    private Cases() {
    }

    /**
     * Reads them all; each must have that shelf.
     *
     * @param shelf the file of the shelf
     * @return by the name of the file, without its ending
     */
    public static Map<String, AssembledCase> of(List<Path> files, Path shelf) {
        Map<String, AssembledCase> cases = new LinkedHashMap<>();
        for (Path file : files) {
            CaseRun run = CaseRun.of(file);
            String named = run.open().file().getShelf();
            boolean same = named != null && file.resolveSibling(named).toAbsolutePath().normalize()
                    .equals(shelf.toAbsolutePath().normalize());
            if (!same) {
                throw new CommandLineException(file + ": the case names the shelf "
                        + (named == null ? "of no laboratory" : named) + ", not " + shelf);
            }
            String name = file.getFileName().toString();
            if (cases.put(name.substring(0, name.length() - suffix(name)), run.assembled()) != null) {
                throw new CommandLineException("two cases are called " + name);
            }
        }
        return cases;
    }

    private static int suffix(String name) {
        return name.endsWith(DocumentKind.CASE.suffix()) ? DocumentKind.CASE.suffix().length() : 0;
    }
}
