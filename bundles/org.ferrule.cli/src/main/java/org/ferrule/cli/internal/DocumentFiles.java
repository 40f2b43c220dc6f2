/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.io.json.ReadResult;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.FitChart;
import org.ferrule.model.RuleSet;
import org.ferrule.model.check.Severity;

/** Reads documents from files; what cannot be used is an error that tells file, line and column. */
public final class DocumentFiles {
    private final JsonDocuments documents = new JsonDocuments();

    /** Reads a file, whatever comes of it. */
    public ReadResult read(Path file) {
        try {
            return documents.read(Files.readAllBytes(file), file.getFileName().toString());
        } catch (NoSuchFileException e) {
            throw new CommandLineException("there is no file " + file);
        } catch (IOException e) {
            throw new CommandLineException("the file " + file + " cannot be read: " + e.getMessage());
        }
    }

    /** Reads a document that is needed. */
    public <D extends Document> D require(Path file, Class<D> type, DocumentKind kind) {
        ReadResult result = read(file);
        if (result.broken()) {
            throw new CommandLineException(Problems.lines(file, result.problems(), Severity.ERROR));
        }
        Document document = result.document().orElseThrow();
        if (!type.isInstance(document)) {
            throw new CommandLineException(file + " is a document of format " + document.getFormat() + "; expected "
                    + kind.format());
        }
        return type.cast(document);
    }

    /** Reads a library. */
    public LibraryReader library(Path file, String reference) {
        return new LibraryReader(reference, require(file, DeviceLibrary.class, DocumentKind.DEVICES));
    }

    /** Reads a rule set. */
    public RuleSet rules(Path file) {
        return require(file, RuleSet.class, DocumentKind.RULES);
    }

    /** Reads a chart and everything that it refers to, by paths relative to it. */
    public OpenChart chart(Path file) {
        FitChart chart = require(file, FitChart.class, DocumentKind.CHART);
        if (chart.getRules() == null) {
            throw new CommandLineException(file + ": the chart names no rule set");
        }
        return new OpenChart(chart, libraries(file, chart.getLibraries()),
                rules(file.resolveSibling(chart.getRules())));
    }

    /** Reads a case and everything that it refers to, by paths relative to it. */
    public OpenCase caseFile(Path file) {
        CaseDocument document = require(file, CaseDocument.class, DocumentKind.CASE);
        if (document.getRules() == null || document.getTechniques() == null) {
            throw new CommandLineException(file + ": the case names no rule set or no techniques");
        }
        return new OpenCase(document, libraries(file, document.getLibraries()),
                rules(file.resolveSibling(document.getRules())),
                require(file.resolveSibling(document.getTechniques()), TechniqueLibrary.class,
                        DocumentKind.TECHNIQUES),
                Optional.ofNullable(document.getShelf()).map(
                        path -> require(file.resolveSibling(path), ShelfDocument.class, DocumentKind.SHELF)));
    }

    /** Reads libraries, by paths relative to the document that names them. */
    public List<LibraryReader> libraries(Path file, List<String> paths) {
        return paths.stream().map(path -> library(file.resolveSibling(path), path)).toList();
    }

    /** The only rule set in a folder. */
    public Path onlyRuleSetIn(Path folder) {
        List<Path> found = within(folder, DocumentKind.RULES, 1);
        if (found.size() != 1) {
            throw new CommandLineException(
                    (found.isEmpty() ? "there is no rule set in " : "there are several rule sets in ")
                            + folder + "; name one with --rules");
        }
        return found.get(0);
    }

    /** The documents of a kind in a folder and the folders below it, by name. */
    public static List<Path> below(Path folder, DocumentKind kind) {
        return within(folder, kind, Integer.MAX_VALUE);
    }

    private static List<Path> within(Path folder, DocumentKind kind, int depth) {
        try (Stream<Path> files = Files.walk(folder, depth)) {
            return files.filter(f -> f.getFileName().toString().endsWith(kind.suffix())).sorted().toList();
        } catch (IOException e) {
            throw new CommandLineException("the folder " + folder + " cannot be read: " + e.getMessage());
        }
    }
}
