/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.DayConverter;
import org.ferrule.cli.internal.DocumentFiles;
import org.ferrule.cli.internal.PlanRun;
import org.ferrule.engine.plan.CaseClosing.StoredDocument;
import org.ferrule.engine.plan.CaseClosing;
import org.ferrule.engine.plan.CountTaking;
import org.ferrule.engine.plan.UnitTaking;
import org.ferrule.escalation.log.Counted;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.CaseEnd;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.FileReferences;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Closes a case. */
@Command(name = "close", mixinStandardHelpOptions = true, description = "Closes a case: writes into it what was planned, what was used, and a fingerprint of every document that it rests on. A closed case is not closed again.")
final class CloseCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CASE", description = "The case.")
    private Path file;

    @Option(names = "--ended", paramLabel = "HOW", required = true, description = "crossed or stopped; the log must agree.")
    private CaseEnd ended;

    @Option(names = "--day", paramLabel = "DAY", converter = DayConverter.class, description = "The day on which it is closed; by default today.")
    private LocalDate day = LocalDate.now();

    @Option(names = "--count", description = "Adds its tries to the laboratory's own counts in the technique library.")
    private boolean count;

    @Option(names = "--take-units", description = "Takes the units that were used off the shelf.")
    private boolean takeUnits;

    private final DocumentFiles documents = new DocumentFiles();

    @Override
    public Integer call() {
        CaseDocument document = documents.require(file, CaseDocument.class, DocumentKind.CASE);
        if (document.getClosing() != null) {
            throw new CommandLineException(file + " was closed on " + document.getClosing().getClosed());
        }
        PlanRun run = PlanRun.of(file, Optional.empty());
        run.problems().forEach(spec.commandLine().getErr()::println);
        try {
            document.setClosing(CaseClosing.of(run.assembled(), ended, day, stored(document)));
        } catch (IllegalArgumentException e) {
            throw new CommandLineException(file + ": " + e.getMessage());
        }
        // All that is asked for is made ready before anything is written: a case is closed once only.
        Map<Path, Document> changed = new LinkedHashMap<>();
        changed.put(file, document);
        if (count) {
            count(document, run, changed);
        }
        boolean complete = !takeUnits || take(document, run, changed);
        changed.forEach(this::write);
        return complete ? Main.FITS : Main.OTHER;
    }

    private Map<String, StoredDocument> stored(CaseDocument document) {
        Map<String, StoredDocument> stored = new LinkedHashMap<>();
        for (String path : FileReferences.of(document)) {
            Path other = file.resolveSibling(path);
            try {
                stored.put(path, new StoredDocument(documents.require(other, Document.class, kind(other)),
                        Files.readAllBytes(other)));
            } catch (IOException e) {
                throw new CommandLineException("the file " + other + " cannot be read: " + e.getMessage());
            }
        }
        return stored;
    }

    private static DocumentKind kind(Path path) {
        return DocumentKind.ofFileName(path.getFileName().toString()).orElseThrow(
                () -> new CommandLineException(path + " has no ending of a document that a case may name"));
    }

    private void count(CaseDocument document, PlanRun run, Map<Path, Document> changed) {
        Path path = file.resolveSibling(document.getTechniques());
        TechniqueLibrary library = documents.require(path, TechniqueLibrary.class, DocumentKind.TECHNIQUES);
        int taken = CountTaking.take(library, Counted.of(run.assembled().file().log(), run.assembled().ladder()));
        if (taken > 0) {
            changed.put(path, library);
        }
        spec.commandLine().getErr().println(taken + (taken == 1 ? " try" : " tries") + " counted");
    }

    private boolean take(CaseDocument document, PlanRun run, Map<Path, Document> changed) {
        if (document.getShelf() == null) {
            throw new CommandLineException(file + ": the case names no shelf to take units from");
        }
        Path path = file.resolveSibling(document.getShelf());
        ShelfDocument shelf = documents.require(path, ShelfDocument.class, DocumentKind.SHELF);
        List<String> missing = UnitTaking.take(shelf, run.assembled().file().log());
        missing.forEach(spec.commandLine().getErr()::println);
        changed.put(path, shelf);
        return missing.isEmpty();
    }

    private void write(Path path, Document document) {
        try {
            AtomicFiles.write(path, new JsonDocuments().write(document));
            spec.commandLine().getErr().println("wrote " + path);
        } catch (IOException e) {
            throw new CommandLineException(path + " cannot be written: " + e.getMessage());
        }
    }
}
