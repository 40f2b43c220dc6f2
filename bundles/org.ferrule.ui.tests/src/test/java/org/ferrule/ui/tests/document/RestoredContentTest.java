/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.Platform;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.edit.ModelItemProviderAdapterFactory;
import org.ferrule.ui.internal.recovery.ContentCommand;
import org.ferrule.ui.internal.recovery.UnsavedEdits;
import org.ferrule.ui.internal.recovery.UnsavedJournal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The journal of unsaved edits, and the command that restores them. */
class RestoredContentTest {
    private final JsonDocuments documents = new JsonDocuments();

    @TempDir
    private Path folder;

    private List<Document> demo(DocumentKind kind) {
        return Collections.list(Platform.getBundle("org.ferrule.ui").findEntries("demo", "*" + kind.suffix(), false))
                .stream().sorted(Comparator.comparing(URL::getPath)).map(this::read).toList();
    }

    private Document read(URL url) {
        try (InputStream stream = url.openStream()) {
            return documents.read(stream, url.getPath()).document().orElseThrow();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The first document of each kind is made to say what the last one says. */
    @ParameterizedTest
    @EnumSource(DocumentKind.class)
    void documentTakesAllThatAnotherOneSaysAndGivesItBack(DocumentKind kind) {
        List<Document> all = demo(kind);
        Document document = all.get(0);
        Document wanted = all.get(all.size() - 1);
        byte[] before = documents.write(document);
        BasicCommandStack commands = new BasicCommandStack();
        AdapterFactoryEditingDomain domain = new AdapterFactoryEditingDomain(new ModelItemProviderAdapterFactory(),
                commands);
        Resource resource = new ResourceImpl(URI.createURI("test:document"));
        domain.getResourceSet().getResources().add(resource);
        resource.getContents().add(document);
        Command command = new ContentCommand(domain, document).taking(wanted, "Restoring");
        assertEquals(all.size() > 1, command.canExecute());
        if (command.canExecute()) {
            commands.execute(command);
            assertArrayEquals(documents.write(wanted), documents.write(document));
            commands.undo();
        }
        assertArrayEquals(before, documents.write(document));
    }

    private static UnsavedEdits edits(String path, String content) {
        return new UnsavedEdits(IPath.fromPortableString(path), Instant.parse("2026-03-09T08:00:00Z"), "base",
                content.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> contents(UnsavedJournal journal) throws IOException {
        return journal.left().stream().map(left -> new String(left.edits().content(), StandardCharsets.UTF_8)).toList();
    }

    @Test
    void laterRunFindsTheLastOfSeveralEditsOfADocument() throws IOException {
        UnsavedJournal first = new UnsavedJournal(folder.resolve("journal"));
        first.keep(edits("/P/\u00e4.rules.json", "one"));
        first.keep(edits("/P/\u00e4.rules.json", "two\nlines"));
        assertEquals(List.of(), contents(first), "its own edits are not left over");
        UnsavedJournal second = new UnsavedJournal(folder.resolve("journal"));
        assertEquals(List.of("two\nlines"), contents(second));
        assertEquals("/P/\u00e4.rules.json", second.left().get(0).edits().path().toPortableString());
        assertEquals("base", second.left().get(0).edits().base());
    }

    @Test
    void laterRunNeverWritesOverWhatAnEarlierOneHasLeft() throws IOException {
        new UnsavedJournal(folder).keep(edits("/P/a.rules.json", "earlier"));
        UnsavedJournal second = new UnsavedJournal(folder);
        second.keep(edits("/P/a.rules.json", "later"));
        second.drop(IPath.fromPortableString("/P/a.rules.json"));
        assertEquals(List.of("earlier"), contents(second));
        second.drop(second.left().get(0));
        assertEquals(List.of(), contents(second));
    }

    @Test
    void fileThatIsCutOffIsPassedOverAndStays() throws IOException {
        Files.writeString(folder.resolve("x.unsaved"), "ferrule unsaved 1\n/P/a");
        new UnsavedJournal(folder).keep(edits("/P/a.rules.json", "whole"));
        assertEquals(List.of("whole"), contents(new UnsavedJournal(folder)));
        assertTrue(Files.exists(folder.resolve("x.unsaved")));
        try (Stream<Path> files = Files.list(folder)) {
            assertFalse(files.anyMatch(file -> file.toString().endsWith(".tmp")), "no half-written file");
        }
    }
}
