/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

/** The schemas agree with the reader, as an independent validator sees them (JSON Schema 2020-12). */
class SchemaTest {

    private static final Path ROOT = Path.of("../..");

    @Test
    void acceptsTheSample() throws IOException {
        assertEquals(List.of(), errors(DocumentKind.DEVICES, Samples.LIBRARY));
    }

    /** Texts as people write them; the schema must not be stricter than the reader. */
    @ParameterizedTest
    @ValueSource(strings = { "0.070 in min", "0.070\\\" min", ".070 in", "2.6 Fr max", "2.6F", "2.6 French",
        "1.02 mm \u00B10.03", "1.02 \u00B1 0.03 mm", "1.02 mm +0.02/-0.01", "0.88..0.94 mm", "1.015 mm sd 0.008 n 12",
        "1.78 mm", "1.78 mm nom", "1.02 mm measured", "0.070 in (1.78 mm)", "0.070 in / 1.78 mm", "80 \u00B5m",
        "80 \u03BCm", "0.070\u2033" })
    void acceptsFiguresAsPeopleWriteThem(String text) throws IOException {
        assertEquals(List.of(), errors(DocumentKind.DEVICES, device("\"takesWire\":\"" + text + "\"")));
    }

    @ParameterizedTest
    @ValueSource(strings = { "\"takesWire\":\"0.014\"", "\"takesWire\":0.014", "\"takesWire\":null",
        "\"kind\":\"balloon\"",
        "\"sections\":{}", "\"sections\":[{\"rigid\":\"yes\"}]", "\"claims\":[{}]",
        "\"claims\":[{\"type\":\"compatible\",\"covers\":[\"up\"]}]", "\"cutter\":{\"type\":\"drill\"}",
        "\"balloon\":{\"nominalPressure\":\"8\"}", "\"name\":7" })
    void refusesWhatTheReaderRefuses(String keys) throws IOException {
        assertFalse(errors(DocumentKind.DEVICES, device(keys)).isEmpty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            DEVICES | {}
            DEVICES | {"format":"ferrule.rules","version":1}
            DEVICES | {"format":"ferrule.devices","version":2}
            DEVICES | {"format":"ferrule.devices"}
            DEVICES | {"format":"ferrule.devices","version":1,"devices":[{}]}
            DEVICES | {"format":"ferrule.devices","version":1, \
                "bench":[{"outer":"a","inner":"b","result":"passed","samples":0}]}
            RULES   | {"format":"ferrule.rules","version":1,"confidence":1}
            RULES   | {"format":"ferrule.rules","version":1,"spans":[{"figure":"outer diameter"}]}
            RULES   | {"format":"ferrule.rules","version":1,"flowLimits":[{"use":"contrast","least":1.5}]}
            RULES   | {"format":"ferrule.rules","version":1,"allowances":[{"purpose":"nothing","length":"8 cm"}]}
            RULES   | {"format":"ferrule.rules","version":1,"ratioBands":[{"use":"burr to vessel","low":0.4}]}
            CHART   | {"format":"ferrule.chart","version":1}
            CHART   | {"format":"ferrule.chart","version":1,"libraries":["a.devices.json"],"rules":"r.rules.json", \
                "outer":{},"inner":{},"conditions":{"inside":[{"tipAhead":"3 cm"}]}}
            CHART   | {"format":"ferrule.chart","version":1,"libraries":["a.devices.json"],"rules":"r.rules.json", \
                "outer":{},"inner":{},"conditions":{"bends":[{"radius":"20 mm","angleDegrees":0}]}}
            CHART   | {"format":"ferrule.chart","version":1,"libraries":[],"rules":"r.rules.json","outer":{},"inner":{}}
            TECHNIQUES | {"format":"ferrule.techniques","version":1, \
                "techniques":[{"id":"a","name":"A","hazard":"usual"}]}
            TECHNIQUES | {"format":"ferrule.techniques","version":1,"setups":[{"id":"a","name":"A","hazard":"mild"}]}
            TECHNIQUES | {"format":"ferrule.techniques","version":1,"bailOut":[{"id":"a","count":0}]}
            TECHNIQUES | {"format":"ferrule.techniques","version":1, \
                "stopRules":[{"id":"a","words":"w","limit":0}]}
            CASE    | {"format":"ferrule.case","version":1,"libraries":["a.devices.json"],"rules":"r.rules.json", \
                "techniques":"t.techniques.json","system":{},"aim":{"stoppingCost":1}}
            CASE    | {"format":"ferrule.case","version":1,"libraries":["a.devices.json"],"rules":"r.rules.json", \
                "techniques":"t.techniques.json","system":{"guide":"g"},"aim":{"stoppingCost":1,"objective":"joy"}}
            SHELF   | {"format":"ferrule.shelf","version":1,"items":[{"id":"a","lots":[{}]}]}
            SHELF   | {"format":"ferrule.shelf","version":1,"items":[{"id":"a","parLevel":-1}]}
            """)
    void refusesBrokenDocuments(DocumentKind kind, String json) throws IOException {
        assertFalse(errors(kind, json).isEmpty());
    }

    @Test
    void acceptsUnknownKeys() throws IOException {
        assertEquals(List.of(), errors(DocumentKind.DEVICES, device("\"shade\":{\"of\":\"blue\"}")));
    }

    /** Documents without gaps in what is required are valid as far as the form goes. */
    @ParameterizedTest
    @MethodSource("org.ferrule.io.json.RoundTripTest#seeds")
    void acceptsWhateverIsWrittenExceptForMissingOrUnreadableValues(long seed) throws IOException {
        Document document = new RandomDocuments(seed).next();
        List<Error> errors = errors(DocumentKind.of(document), text(document));
        assertEquals(List.of(), errors.stream().filter(error -> !List.of("required", "minItems", "pattern", "minimum",
                "maximum", "exclusiveMinimum", "exclusiveMaximum").contains(error.getKeyword())).toList());
    }

    @ParameterizedTest
    @MethodSource
    void acceptsTheDocumentsOfTheRepository(Path file) throws IOException {
        DocumentKind kind = DocumentKind.ofFileName(file.toString()).orElseThrow();
        assertEquals(List.of(), errors(kind, Files.readString(file)), file.toString());
        ReadResult result = new JsonDocuments().read(Files.readAllBytes(file), file.getFileName().toString());
        assertFalse(result.hasErrors(), () -> file + ": " + result.problems());
    }

    static List<Path> acceptsTheDocumentsOfTheRepository() throws IOException {
        try (Stream<Path> files = Stream.of("seeds", "docs").map(ROOT::resolve).filter(Files::isDirectory)
                .flatMap(SchemaTest::walk)) {
            return files.filter(file -> DocumentKind.ofFileName(file.toString()).isPresent()).sorted().toList();
        }
    }

    private static Stream<Path> walk(Path folder) {
        try {
            return Files.walk(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Error> errors(DocumentKind kind, String json) throws IOException {
        return schema(kind).validate(json, InputFormat.JSON);
    }

    private static Schema schema(DocumentKind kind) throws IOException {
        String name = kind.suffix().substring(1).replace(".json", ".schema.json");
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(ROOT.resolve("docs/schema").resolve(name)), InputFormat.JSON);
    }

    private static String device(String keys) {
        return "{\"format\":\"ferrule.devices\",\"version\":1,\"devices\":[{\"id\":\"d\"," + keys + "}]}";
    }

    private static String text(Document document) {
        return new String(new JsonDocuments().write(document), StandardCharsets.UTF_8);
    }
}
