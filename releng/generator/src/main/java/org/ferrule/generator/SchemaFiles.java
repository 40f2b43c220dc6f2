/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EPackage;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** Writes the JSON Schemas of all kinds of document into a folder. */
final class SchemaFiles {

    private static final ObjectWriter WRITER = new JsonMapper().writer(new DefaultPrettyPrinter(
            Separators.createDefaultInstance().withObjectFieldValueSpacing(Spacing.AFTER))
            .withObjectIndenter(new DefaultIndenter("  ", "\n")));

    private final EPackage model;

    SchemaFiles(EPackage model) {
        this.model = model;
    }

    void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (EClass document : JsonSchema.documents(model)) {
            JsonSchema schema = new JsonSchema(document);
            Files.writeString(folder.resolve(schema.fileName()), WRITER.writeValueAsString(schema.build()) + "\n");
        }
    }
}
