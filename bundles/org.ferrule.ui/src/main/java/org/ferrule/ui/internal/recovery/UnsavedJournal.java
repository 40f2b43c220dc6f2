/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.recovery;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IPath;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.ui.internal.document.ContentHash;

/**
 * Keeps what is not saved yet in a folder, one file for each document and run of the program, so that a later run never
 * writes over what an earlier one has left. Each file is written whole or not at all. Safe for every thread.
 */
public final class UnsavedJournal {

    /**
     * Edits that an earlier run of the program has left.
     *
     * @param edits the edits
     * @param file where they are kept
     */
    public record Left(UnsavedEdits edits, Path file) {
    }

    private static final String SUFFIX = ".unsaved";

    private final String run = UUID.randomUUID().toString();
    private final Path folder;

    /** Creates a journal in a folder, which is made when it is needed. */
    public UnsavedJournal(Path folder) {
        this.folder = folder;
    }

    /**
     * Keeps the edits in place of what this run has kept of the document before.
     *
     * @throws IOException if they cannot be written; what was kept before is still there
     */
    public synchronized void keep(UnsavedEdits edits) throws IOException {
        Files.createDirectories(folder);
        AtomicFiles.write(file(edits.path()), JournalFormat.write(edits));
    }

    /**
     * Forgets what this run has kept of a document.
     *
     * @throws IOException if the folder cannot be written
     */
    public synchronized void drop(IPath path) throws IOException {
        Files.deleteIfExists(file(path));
    }

    /**
     * Forgets what an earlier run has left.
     *
     * @throws IOException if the folder cannot be written
     */
    public synchronized void drop(Left left) throws IOException {
        Files.deleteIfExists(left.file);
    }

    /**
     * Returns what earlier runs have left, the latest first; what cannot be read is logged and left where it is.
     *
     * @throws IOException if the folder cannot be read
     */
    public synchronized List<Left> left() throws IOException {
        List<Left> left = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(this::isOfEarlierRun).forEach(file -> read(file, left));
            }
        }
        left.sort(Comparator.comparing((Left one) -> one.edits.time()).reversed());
        return left;
    }

    private static void read(Path file, List<Left> into) {
        try {
            into.add(new Left(JournalFormat.read(Files.readAllBytes(file)), file));
        } catch (IOException e) {
            ILog.of(UnsavedJournal.class).warn("Unsaved edits in " + file + " cannot be read", e);
        }
    }

    private boolean isOfEarlierRun(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(SUFFIX) && !name.contains(run);
    }

    private Path file(IPath path) {
        byte[] bytes = path.toPortableString().getBytes(StandardCharsets.UTF_8);
        return folder.resolve(ContentHash.of(bytes).sha256().substring(0, 16) + "." + run + SUFFIX);
    }
}
