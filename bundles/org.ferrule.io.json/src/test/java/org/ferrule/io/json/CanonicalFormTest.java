/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;

import org.ferrule.model.Claim;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ExtraKey;
import org.ferrule.model.ModelFactory;
import org.ferrule.quantity.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CanonicalFormTest {

    private static final String HEADER = "{\n  \"format\": \"ferrule.devices\",\n  \"version\": 1";

    @Test
    void writesWhatItRead() {
        ReadResult result = Samples.library(Samples.LIBRARY);
        assertEquals(Samples.LIBRARY, Samples.written(result));
        assertTrue(result.canonical());
    }

    /** Absent, a claim speaks of the device alone, and nobody says whether a wire can be extended. */
    @Test
    void keepsANoThatSaysMoreThanNothing() {
        String text = HEADER + """
                ,
                  "devices": [
                    {
                      "id": "w",
                      "wire": {
                        "extendable": false
                      },
                      "claims": [
                        {
                          "type": "compatible",
                          "alone": false
                        },
                        {
                          "type": "compatible",
                          "alone": true
                        },
                        {
                          "type": "compatible"
                        }
                      ]
                    }
                  ]
                }
                """;
        ReadResult result = Samples.library(text);
        assertEquals(text, Samples.written(result));
        assertEquals(List.of(false, true, true), ((DeviceLibrary) result.document().orElseThrow()).getDevices().get(0)
                .getClaims().stream().map(Claim::isAlone).toList());
    }

    @Test
    void writesConditionsAsTheyWereRead() {
        String text = """
                {
                  "format": "ferrule.chart",
                  "version": 1,
                  "conditions": {
                    "direction": "tip first",
                    "wire": "w-14",
                    "reach": "12 cm",
                    "inside": [
                      {
                        "device": "b.devices.json!b-1",
                        "wire": "w-14",
                        "tipAhead": "-3.0 cm",
                        "used": true
                      },
                      {
                        "device": "b-2",
                        "tipAhead": "+.5 in"
                      }
                    ],
                    "through": {
                      "extension": "e-6#main",
                      "protrusion": "8 cm"
                    },
                    "bends": [
                      {
                        "where": "vessel",
                        "radius": "15 mm",
                        "angleDegrees": 60.50
                      }
                    ],
                    "afterInflation": true
                  }
                }
                """;
        assertEquals(text, Samples.written(Samples.read(text, "x.chart.json")));
    }

    /** A count of none is a count, and an answer of no is one. */
    @Test
    void writesStepsOfAPlanAsTheyWereRead() {
        String text = """
                {
                  "format": "ferrule.techniques",
                  "version": 1,
                  "techniques": [
                    {
                      "id": "t",
                      "name": "T",
                      "axis": "add support",
                      "hazard": "raised",
                      "setups": ["s"],
                      "after": ["t"],
                      "tries": [
                        {
                          "minutes": 5,
                          "money": 0,
                          "successes": 0,
                          "failures": 0
                        }
                      ],
                      "changes": ["more support"],
                      "offLabel": "why",
                      "source": "p"
                    }
                  ],
                  "bailOut": [
                    {
                      "id": "r",
                      "carrier": "main wire",
                      "count": 1
                    }
                  ]
                }
                """;
        assertEquals(text, Samples.written(Samples.read(text, "x.techniques.json")));
    }

    @Test
    void writesACaseAsItWasRead() {
        String text = """
                {
                  "format": "ferrule.case",
                  "version": 1,
                  "facts": [
                    {
                      "fact": "f",
                      "holds": false
                    }
                  ],
                  "aim": {
                    "stoppingCost": 60,
                    "tiersFirst": false,
                    "oneNewRiskAStep": true,
                    "budgets": {
                      "contrastMl": 200
                    }
                  },
                  "log": [
                    {
                      "move": "t",
                      "outcome": "given up",
                      "minutes": 5.0,
                      "units": [
                        {
                          "role": "r",
                          "item": "i"
                        }
                      ],
                      "remark": "none"
                    }
                  ]
                }
                """;
        assertEquals(text, Samples.written(Samples.read(text, "x.case.json")));
    }

    @Test
    void writesLimitsAsTheyWereRead() {
        String text = """
                {
                  "format": "ferrule.rules",
                  "version": 1,
                  "spans": [
                    {
                      "figure": "crossing profile",
                      "below": "0 mm",
                      "above": "0.1 mm",
                      "runsLow": true
                    }
                  ],
                  "flowLimits": [
                    {
                      "use": "pressure",
                      "least": 0.20,
                      "source": "s"
                    }
                  ],
                  "allowances": [
                    {
                      "purpose": "hub and valve",
                      "length": "8 cm"
                    }
                  ],
                  "ratioBands": [
                    {
                      "use": "burr to vessel",
                      "low": 0.4,
                      "high": 0.60,
                      "meaning": "usual"
                    }
                  ],
                  "chanceLimits": [
                    {
                      "greatest": 0.010
                    }
                  ],
                  "confidence": 0.95
                }
                """;
        assertEquals(text, Samples.written(Samples.read(text, "x.rules.json")));
    }

    @Test
    void writesAnEmptyDocumentWithItsHeader() {
        assertEquals(HEADER + "\n}\n", text(DocumentKind.DEVICES.create()));
    }

    @Test
    void changesOneLineWhenOneValueChanges() {
        DeviceLibrary library = (DeviceLibrary) Samples.library(Samples.LIBRARY).document().orElseThrow();
        library.getDevices().get(0).getSections().get(0).setOd(Dimension.parse("2.05 mm max"));
        List<String> before = Samples.LIBRARY.lines().toList();
        List<String> after = text(library).lines().toList();
        assertEquals(before.size(), after.size());
        assertEquals(List.of("          \"od\": \"2.05 mm max\","),
                after.stream().filter(line -> !before.contains(line)).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            spaces               | {"format":"ferrule.devices","version":1}
            order of keys        | {\\n  "version": 1,\\n  "format": "ferrule.devices"\\n}\\n
            no newline at end    | {\\n  "format": "ferrule.devices",\\n  "version": 1\\n}
            CR LF                | {\\r\\n  "format": "ferrule.devices",\\r\\n  "version": 1\\r\\n}\\r\\n
            needless escape      | {\\n  "format": "ferrule.device\\u0073",\\n  "version": 1\\n}\\n
            empty array          | {\\n  "format": "ferrule.devices",\\n  "version": 1,\\n  "devices": []\\n}\\n
            byte order mark      | \uFEFF{\\n  "format": "ferrule.devices",\\n  "version": 1\\n}\\n
            """)
    void seesWhatWillBePutInOrder(String what, String text) {
        ReadResult result = Samples.library(text.replace("\\n", "\n").replace("\\r", "\r"));
        assertFalse(result.broken(), what);
        assertFalse(result.canonical(), what);
        assertEquals(HEADER + "\n}\n", Samples.written(result), what);
    }

    @ParameterizedTest
    @ValueSource(strings = { "1.00", "1e5", "-0", "1E+400", "0.1000000000000000055511151231257827", "true", "null",
        "\"\\u0041\\/\"", "[]", "{}", "[1, [2]]", "[{\"a\": 1}, 2]", "\"\\ud800\"" })
    void keepsUnknownValuesAsSpelled(String json) {
        ReadResult result = Samples.libraryWith("\"x\":" + json);
        assertEquals(strip(json), strip(result.document().orElseThrow().getExtras().get(0).getJson()));
        assertTrue(strip(Samples.written(result)).endsWith(strip("\"x\":" + json + "}")));
    }

    @Test
    void keepsKeysThatTheModelHasForItself() {
        assertTrue(Samples.written(Samples.libraryWith("\"extras\":[{\"key\":\"a\"}]")).contains("\"extras\": ["));
    }

    @ParameterizedTest
    @CsvSource({ "1.00, 1.00", "1e2, 100", "0.950, 0.950", "1.5E-1, 0.15", "-0.5, -0.5" })
    void writesNumbersPlainlyAndKeepsTheirZeros(String read, String written) {
        assertTrue(
                Samples.written(Samples.rulesWith("\"coverage\":" + read)).contains("\"coverage\": " + written + "\n"));
    }

    @Test
    void escapesWhatJsonCannotHold() {
        Device device = device(
                "quote \" backslash \\ newline \n bell \u0007 lone \uD800 pair \uD83D\uDE00 \u00B0 \u2028");
        String text = text((DeviceLibrary) device.eContainer());
        assertTrue(text.contains("\"quote \\\" backslash \\\\ newline \\n bell \\u0007 lone \\uD800 pair \uD83D\uDE00 "
                + "\u00B0 \u2028\""), text);
        assertEquals(device.getName(), ((DeviceLibrary) Samples.library(text).document().orElseThrow()).getDevices()
                .get(0).getName());
    }

    @Test
    void keepsAStatedDefault() {
        String text = Samples.written(Samples.deviceWith("\"lumens\":[{\"use\":\"working\"},{}]"));
        assertEquals(1, text.split("\"use\": \"working\"", -1).length - 1);
    }

    @Test
    void refusesToWriteWhatItCouldNotRead() {
        Device device = device("d");
        ExtraKey extra = ModelFactory.eINSTANCE.createExtraKey();
        extra.setKey("x");
        extra.setJson("{");
        device.getExtras().add(extra);
        assertThrows(IllegalArgumentException.class, () -> text((DeviceLibrary) device.eContainer()));
        extra.setJson("1");
        extra.setKey("name");
        assertThrows(IllegalArgumentException.class, () -> text((DeviceLibrary) device.eContainer()));
    }

    private static Device device(String name) {
        DeviceLibrary library = (DeviceLibrary) DocumentKind.DEVICES.create();
        Device device = ModelFactory.eINSTANCE.createDevice();
        device.setName(name);
        library.getDevices().add(device);
        return device;
    }

    private static String text(Document document) {
        return new String(new JsonDocuments().write(document), StandardCharsets.UTF_8);
    }

    private static String strip(String json) {
        return json.replaceAll("\\s", "");
    }
}
