/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Puts what EMF generated into the shape of this repository: the licence header, LF, no blanks at line ends, and the
 * labels of {@code plugin.properties} in {@code src-gen} too, where the jar takes them from. Item providers take the
 * text of an object from one place instead of from one of its features. The generated {@code plugin.xml} is not used.
 */
final class Tidying {

    private static final Pattern HEADER = Pattern.compile("\\A/\\*\\*\\n.*?\\*/\\n", Pattern.DOTALL);
    private static final Pattern PREAMBLE = Pattern.compile("\\A#\\n\\n(?:\\w+ = .*\\n)*\\n?");
    private static final Pattern ITEM_TEXT = Pattern.compile(
            "(public String getText\\(Object object\\)\\s+\\{\\s+).*?"
                    + "(getString\\(\"_UI_\\w+_type\"\\)).*?(\\n\\s+\\}\\n)",
            Pattern.DOTALL);
    private static final String LICENCE = """
            /*
             * Copyright (c) 2026 the Ferrule authors.
             * SPDX-License-Identifier: EPL-2.0
             */
            """;

    private final Path sources;
    private final Labels labels;

    Tidying(Path sources, Labels labels) {
        this.sources = sources;
        this.labels = labels;
    }

    void run() throws IOException {
        for (Path file : files()) {
            Files.writeString(file, tidy(Files.readString(file).replace("\r\n", "\n")));
        }
    }

    /** Takes the labels from beside the sources into them. */
    void takeLabels() throws IOException {
        String text = Files.readString(sources.resolveSibling("plugin.properties")).replace("\r\n", "\n");
        String kept = PREAMBLE.matcher(text).replaceFirst("# Generated from ferrule.ecore.\n\n");
        Files.writeString(sources.resolve("plugin.properties"), labels.in(kept));
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> paths = Files.walk(sources)) {
            return paths.filter(p -> p.toString().endsWith(".java")).toList();
        }
    }

    private static String tidy(String text) {
        String labelled = ITEM_TEXT.matcher(text)
                .replaceFirst("$1return org.ferrule.model.ObjectLabels.of(object, $2);$3");
        String clean = labelled.replaceAll("[ \\t]+\\n", "\n").stripTrailing() + "\n";
        return LICENCE + HEADER.matcher(clean).replaceFirst("");
    }
}
