/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class FileReferencesTest {

    @Test
    void namesTheFilesOfACase() {
        Document document = Notation.set(DocumentKind.CASE.create(),
                "libraries=a.devices.json; libraries=b.devices.json; rules=r.rules.json; shelf=s.shelf.json");
        assertEquals(List.of("a.devices.json", "b.devices.json", "r.rules.json", "s.shelf.json"),
                FileReferences.of(document));
    }

    @Test
    void namesNoneWhereNoneAreGiven() {
        assertEquals(List.of(), FileReferences.of(DocumentKind.CHART.create()));
        assertEquals(List.of(), FileReferences.of(DocumentKind.RULES.create()));
    }

    @Test
    void knowsTheEndingOfEachFileName() {
        assertEquals(List.of(".devices.json", ".rules.json", ".techniques.json", ".shelf.json"),
                List.copyOf(FileReferences.features(DocumentKind.CASE.type()).values()));
    }
}
