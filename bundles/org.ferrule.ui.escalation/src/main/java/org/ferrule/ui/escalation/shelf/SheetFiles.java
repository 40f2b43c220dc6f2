/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.plan.PlanProblem;
import org.ferrule.engine.plan.ShelfSheets;
import org.ferrule.engine.plan.ShelfTranslator.TranslatedShelf;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.model.ShelfDocument;
import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.sheet.SheetException;
import org.ferrule.shelf.sheet.ShelfFormat;
import org.ferrule.shelf.stock.Shelf;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.escalation.live.DocumentEdit;

/** The sheets, in any format that a plug-in knows, into which a shelf goes and from which it comes back. */
public final class SheetFiles {

    private final DocumentSession session;
    private final List<ShelfFormat> formats = Extensions.ofPlatform().shelfFormats();

    /** Exchanges the shelf of a session. */
    public SheetFiles(DocumentSession session) {
        this.session = session;
    }

    /** Returns the formats that are known. */
    List<ShelfFormat> formats() {
        return formats;
    }

    private ShelfFormat format(Path sheet) throws IOException {
        String name = sheet.getFileName().toString().toLowerCase(Locale.ROOT);
        Optional<ShelfFormat> found = formats.stream().filter(format -> name.endsWith("." + format.extension()))
                .findFirst();
        return found.orElseThrow(() -> new IOException("No format is known for " + sheet.getFileName() + "; known are "
                + formats.stream().map(format -> "." + format.extension()).collect(Collectors.joining(", "))));
    }

    private TranslatedShelf translated() {
        return ShelfSheets.of((ShelfDocument) session.document().orElseThrow());
    }

    /** Returns the shelf as a sheet tells it. */
    Shelf shelf() {
        return translated().stock().shelf();
    }

    /** Returns, in sentences, what of the shelf cannot be read, so that a sheet would lose it. */
    List<String> problems() {
        return translated().problems().stream().map(PlanProblem::message).toList();
    }

    /** Writes the shelf as a whole or not at all, in the format that the name's ending stands for. */
    public void write(Path sheet) throws IOException, CoreException {
        AtomicFiles.write(sheet, format(sheet).write(shelf()));
        if (sheet.getParent() != null && sheet.getParent().equals(session.file().getParent().getLocation().toPath())) {
            session.file().getParent().refreshLocal(IResource.DEPTH_ONE, null);
        }
    }

    /** Reads a sheet. */
    ReadShelf read(Path sheet) throws IOException, SheetException {
        return format(sheet).read(Files.readAllBytes(sheet));
    }

    /** Takes a sheet over, as one command. */
    void take(Shelf sheet, boolean removing) {
        session.execute(new DocumentEdit<>((ShelfDocument) session.document().orElseThrow(), "Import of a sheet",
                document -> ShelfSheets.take(document, sheet, removing)));
    }
}
