/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.plan.ShelfSheets;
import org.ferrule.engine.plan.ShelfTranslator.TranslatedShelf;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ShelfDocument;
import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.sheet.SheetException;
import org.ferrule.shelf.sheet.SheetFault;
import org.ferrule.shelf.sheet.ShelfChange;
import org.ferrule.shelf.sheet.ShelfChanges;
import org.ferrule.shelf.sheet.ShelfFormat;
import org.ferrule.shelf.stock.Shelf;

/** A shelf that goes into a sheet, or comes back from one. */
public final class SheetRun {
    private final Path file;
    private final ShelfDocument document;
    private final List<ShelfFormat> formats = Extensions.ofClassPath(SheetRun.class.getClassLoader()).shelfFormats();

    /** Reads a shelf. */
    public SheetRun(Path file) {
        this.file = file;
        this.document = new DocumentFiles().require(file, ShelfDocument.class, DocumentKind.SHELF);
    }

    /** The shelf as a sheet tells it; one that cannot be read as a whole is an error, so that nothing gets lost. */
    private Shelf shelf() {
        TranslatedShelf translated = ShelfSheets.of(document);
        if (!translated.problems().isEmpty()) {
            throw new CommandLineException(translated.problems().stream()
                    .map(problem -> file + ": " + ReferenceProblems.line(problem)).collect(Collectors.joining("\n")));
        }
        return translated.stock().shelf();
    }

    private ShelfFormat format(Path sheet) {
        String name = sheet.getFileName().toString().toLowerCase(Locale.ROOT);
        return formats.stream().filter(format -> name.endsWith("." + format.extension())).findFirst()
                .orElseThrow(() -> new CommandLineException("no format is known for " + sheet + "; known are "
                        + formats.stream().map(format -> "." + format.extension()).collect(Collectors.joining(", "))));
    }

    /** Writes the shelf as a sheet. */
    public void export(Path sheet) {
        ShelfFormat format = format(sheet);
        try {
            byte[] bytes = format.write(shelf());
            Files.createDirectories(sheet.toAbsolutePath().getParent());
            AtomicFiles.write(sheet, bytes);
        } catch (IOException e) {
            throw new CommandLineException(sheet + " cannot be written: " + e.getMessage());
        }
    }

    /** Reads a sheet; what is wrong in it is an error that names each row. */
    public ReadShelf read(Path sheet) {
        try {
            return format(sheet).read(Files.readAllBytes(sheet));
        } catch (SheetException e) {
            throw new CommandLineException(e.faults().stream().map(SheetFault::toString)
                    .map(fault -> sheet + ": " + fault).collect(Collectors.joining("\n")));
        } catch (IOException e) {
            throw new CommandLineException("the file " + sheet + " cannot be read: " + e.getMessage());
        }
    }

    /** What a sheet would change. */
    public List<ShelfChange> changes(ReadShelf sheet, boolean removing) {
        Shelf now = shelf();
        return ShelfChanges.between(now, sheet.over(now), removing);
    }

    /** Takes a sheet over into the shelf's file. */
    public void take(ReadShelf sheet, boolean removing) {
        ShelfSheets.take(document, sheet.over(shelf()), removing);
        try {
            AtomicFiles.write(file, new JsonDocuments().write(document));
        } catch (IOException e) {
            throw new CommandLineException(file + " cannot be written: " + e.getMessage());
        }
    }

    /** One change in one line. */
    public static String line(ShelfChange change) {
        String what = change.what().isEmpty() ? change.item() : change.item() + ", " + change.what();
        return switch (change.kind()) {
            case ADDED -> "+ " + what + ": " + change.is();
            case REMOVED -> "- " + what + ": " + change.was();
            case CHANGED -> "* " + what + ": " + quoted(change.was()) + " -> " + quoted(change.is());
        };
    }

    private static String quoted(String text) {
        return text.isEmpty() ? "nothing" : text;
    }
}
