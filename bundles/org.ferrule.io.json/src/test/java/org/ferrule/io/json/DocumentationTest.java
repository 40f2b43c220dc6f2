/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.ferrule.model.DocumentKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples of the documentation are good documents. */
class DocumentationTest {

    private static final Path FORMATS = Path.of("../../docs/formats.md");
    private static final Pattern EXAMPLE = Pattern.compile("`([\\w.]+)`:\\n\\n```json\\n(.*?)```", Pattern.DOTALL);

    static Stream<Arguments> examples() throws IOException {
        return EXAMPLE.matcher(Files.readString(FORMATS)).results().map(m -> Arguments.of(m.group(1), m.group(2)));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void examplesAreCanonicalAndWithoutProblems(String fileName, String json) throws IOException {
        ReadResult result = Samples.read(json, fileName);
        assertEquals(List.of(), result.problems());
        assertTrue(result.canonical());
        assertEquals(List.of(), SchemaTest.errors(DocumentKind.ofFileName(fileName).orElseThrow(), json));
    }

    @Test
    void everyKindHasAnExample() throws IOException {
        assertEquals(List.of(DocumentKind.values()),
                examples().map(a -> DocumentKind.ofFileName((String) a.get()[0]).orElseThrow()).toList());
    }

    @Test
    void everyKindIsListed() throws IOException {
        String text = Files.readString(FORMATS);
        for (DocumentKind kind : DocumentKind.values()) {
            Matcher row = Pattern.compile("\\| `" + Pattern.quote(kind.suffix()) + "` \\| `"
                    + Pattern.quote(kind.format()) + "` \\|").matcher(text);
            assertTrue(row.find(), kind.name());
        }
    }
}
