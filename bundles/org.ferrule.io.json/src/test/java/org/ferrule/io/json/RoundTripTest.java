/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every document that the Ecore allows. */
class RoundTripTest {

    private static final JsonDocuments DOCUMENTS = new JsonDocuments();

    static LongStream seeds() {
        return LongStream.range(0, 150);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void readsWhatItWrote(long seed) {
        Document document = new RandomDocuments(seed).next();
        byte[] written = DOCUMENTS.write(document);
        ReadResult result = DOCUMENTS.read(written, "x" + DocumentKind.of(document).suffix());
        assertTrue(result.canonical(), () -> result.problems().toString());
        assertTrue(EcoreUtil.equals(document, result.document().orElseThrow()));
        assertArrayEquals(written, DOCUMENTS.write(result.document().orElseThrow()));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void changesOneLineForOneText(long seed) {
        Document document = new RandomDocuments(seed).next();
        List<String> before = lines(document);
        if (changeOneText(document, new Random(seed))) {
            List<String> after = lines(document);
            assertEquals(before.size(), after.size());
            assertEquals(1, LongStream.range(0, before.size())
                    .filter(i -> !before.get((int) i).equals(after.get((int) i))).count());
        }
    }

    /** Whatever an editor or a transfer does to the layout, nothing but the layout changes. */
    @ParameterizedTest
    @MethodSource("seeds")
    void putsAnyLayoutInOrder(long seed) {
        Document document = new RandomDocuments(seed).next();
        String written = new String(DOCUMENTS.write(document), StandardCharsets.UTF_8);
        ReadResult result = DOCUMENTS.read(written.replaceAll("\n *", " \r\n\t").getBytes(StandardCharsets.UTF_8), "");
        assertFalse(result.canonical());
        assertEquals(written, Samples.written(result));
    }

    @Test
    void survivesEveryCutOfADocument() {
        for (int end = 0; end < Samples.LIBRARY.length() - 1; end++) {
            ReadResult result = Samples.library(Samples.LIBRARY.substring(0, end));
            assertEquals(end >= Samples.LIBRARY.length() - 1, !result.broken());
            assertEquals(1, result.problems().size());
        }
    }

    /** No byte, wherever it lands, makes reading fail otherwise than by a problem. */
    @Test
    void survivesStrayBytes() {
        Random random = new Random(1);
        byte[] good = Samples.bytes(Samples.LIBRARY);
        for (int i = 0; i < 3000; i++) {
            byte[] bytes = good.clone();
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            ReadResult result = DOCUMENTS.read(bytes, "x.devices.json");
            assertTrue(!result.broken() || result.hasErrors());
        }
    }

    private static boolean changeOneText(Document document, Random random) {
        List<EObject> objects = new ArrayList<>();
        EcoreUtil.getAllContents(document, true).forEachRemaining(object -> objects.add((EObject) object));
        List<Runnable> changes = new ArrayList<>();
        for (EObject object : objects) {
            for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                if (object.eGet(attribute) instanceof String && !attribute.getName().matches("key|json")) {
                    changes.add(() -> object.eSet(attribute, "changed\n\"text\""));
                }
            }
        }
        if (!changes.isEmpty()) {
            changes.get(random.nextInt(changes.size())).run();
        }
        return !changes.isEmpty();
    }

    private static List<String> lines(Document document) {
        return new String(DOCUMENTS.write(document), StandardCharsets.UTF_8).lines().toList();
    }
}
