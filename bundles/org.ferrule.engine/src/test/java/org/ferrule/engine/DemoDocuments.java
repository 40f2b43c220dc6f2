/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.FitChart;
import org.ferrule.model.RuleSet;

/** The demo documents that ship. */
final class DemoDocuments {
    private DemoDocuments() {
    }

    static Document read(String name) {
        try {
            return new JsonDocuments().read(Files.readAllBytes(folder().resolve(name)), name).requireDocument();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static RuleSet rules() {
        return (RuleSet) read("house.rules.json");
    }

    static Catalogue catalogue() {
        return Catalogue.of(libraryNames().stream()
                .map(name -> new LibraryReader(name, (DeviceLibrary) read(name))).toList());
    }

    /** A chart with the documents that it names. */
    static OpenChart chart(String name) {
        FitChart chart = (FitChart) read(name);
        return new OpenChart(chart, chart.getLibraries().stream()
                .map(path -> new LibraryReader(path, (DeviceLibrary) read(path))).toList(),
                (RuleSet) read(chart.getRules()));
    }

    static List<String> chartNames() {
        return names(".chart.json");
    }

    private static List<String> libraryNames() {
        return names(".devices.json");
    }

    /** The names of all demo documents that end so. */
    static List<String> names(String suffix) {
        try (Stream<Path> files = Files.list(folder())) {
            return files.map(f -> f.getFileName().toString()).filter(n -> n.endsWith(suffix)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("seeds"))) {
            folder = folder.getParent();
        }
        return folder.resolve("seeds/demo");
    }
}
