/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.closed.ClosedCase;
import org.ferrule.engine.closed.Fingerprint;
import org.ferrule.engine.closed.RecordNames;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;

/** Reads the record of a closed case; that the documents it rests on are missing or broken does not keep it from that. */
public final class RecordRun {
    private final DocumentFiles documents = new DocumentFiles();
    private final Path file;

    private RecordRun(Path file) {
        this.file = file;
    }

    /** The record of a case; nothing where it is not closed. */
    public static Optional<ClosedCase> of(Path file) {
        return new RecordRun(file).read();
    }

    private Optional<ClosedCase> read() {
        CaseDocument document = documents.require(file, CaseDocument.class, DocumentKind.CASE);
        return Optional.ofNullable(document.getClosing()).map(closing -> ClosedCase.of(document, names(document),
                Fingerprint.of(closing, this::bytes)));
    }

    private Optional<byte[]> bytes(String path) throws IOException {
        Path other = file.resolveSibling(path);
        return Files.exists(other) ? Optional.of(Files.readAllBytes(other)) : Optional.empty();
    }

    private RecordNames names(CaseDocument document) {
        List<LibraryReader> libraries = document.getLibraries().stream().filter(Objects::nonNull)
                .flatMap(path -> find(path, DeviceLibrary.class).map(library -> new LibraryReader(path, library))
                        .stream())
                .toList();
        return new RecordNames(libraries, find(document.getTechniques(), TechniqueLibrary.class),
                find(document.getShelf(), ShelfDocument.class));
    }

    private <D extends Document> Optional<D> find(String path, Class<D> type) {
        return Optional.ofNullable(path).map(file::resolveSibling).filter(Files::isReadable)
                .flatMap(other -> documents.read(other).document()).filter(type::isInstance).map(type::cast);
    }
}
