/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.common.util.WrappedException;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ModelFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JsonResourceTest {

    @TempDir
    private Path folder;

    private final ResourceSet resources = new ResourceSetImpl();

    @BeforeEach
    void register() {
        JsonResourceFactory.register(resources);
    }

    @Test
    void loadsADocumentWithItsPlaces() throws IOException {
        JsonResource resource = load(Samples.LIBRARY);
        DeviceLibrary library = (DeviceLibrary) resource.document().orElseThrow();
        assertSame(resource, library.getDevices().get(0).eResource());
        assertEquals(21, resource.result().orElseThrow().positions().object(library.getDevices().get(0)).orElseThrow()
                .line());
        assertFalse(resource.isModified());
    }

    @Test
    void savesTheSameBytes() throws IOException {
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        load(Samples.LIBRARY).save(stream, null);
        assertEquals(Samples.LIBRARY, stream.toString(StandardCharsets.UTF_8));
    }

    @Test
    void savesANewDocument() throws IOException {
        Resource resource = resources.createResource(uri());
        resource.getContents().add(DocumentKind.DEVICES.create());
        resource.save(null);
        assertEquals("{\n  \"format\": \"ferrule.devices\",\n  \"version\": 1\n}\n", Files.readString(file()));
    }

    @Test
    void neverSavesOverABrokenDocument() throws IOException {
        Files.writeString(file(), "{");
        WrappedException e = assertThrows(WrappedException.class, () -> resources.getResource(uri(), true));
        assertTrue(e.exception() instanceof BrokenDocumentException, e.toString());
        Resource resource = resources.getResource(uri(), false);
        assertEquals(1, resource.getErrors().get(0).getLine());
        resource.getContents().add(DocumentKind.DEVICES.create());
        assertThrows(IOException.class, () -> resource.save(null));
        assertEquals("{", Files.readString(file()));
    }

    @Test
    void neverSavesOverANewerVersion() throws IOException {
        String newer = Samples.LIBRARY.replace("\"version\": 1", "\"version\": 2");
        JsonResource resource = load(newer);
        assertTrue(resource.result().orElseThrow().readOnly());
        assertThrows(IOException.class, () -> resource.save(null));
        assertEquals(newer, Files.readString(file()));
    }

    @Test
    void leavesTheFileWhenTheDocumentCannotBeWritten() throws IOException {
        JsonResource resource = load(Samples.LIBRARY);
        resource.document().orElseThrow().getExtras().add(ModelFactory.eINSTANCE.createExtraKey());
        resource.document().orElseThrow().getExtras().get(0).setKey("title");
        assertThrows(IllegalArgumentException.class, () -> resource.save(null));
        assertEquals(Samples.LIBRARY, Files.readString(file()));
    }

    @Test
    void refusesToSaveMoreThanOneDocument() throws IOException {
        JsonResource resource = load(Samples.LIBRARY);
        resource.getContents().add(DocumentKind.RULES.create());
        assertThrows(IOException.class, () -> resource.save(new ByteArrayOutputStream(), null));
    }

    private JsonResource load(String text) throws IOException {
        Files.writeString(file(), text);
        return (JsonResource) resources.getResource(uri(), true);
    }

    private Path file() {
        return folder.resolve("x.devices.json");
    }

    private URI uri() {
        return URI.createFileURI(file().toString());
    }
}
