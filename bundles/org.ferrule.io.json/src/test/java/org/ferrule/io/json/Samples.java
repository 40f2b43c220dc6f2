/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.nio.charset.StandardCharsets;

/** Documents for tests. */
final class Samples {

    static final String LIBRARY = """
            {
              "format": "ferrule.devices",
              "version": 1,
              "title": "Sample library",
              "date": "2026-03-01",
              "sources": [
                {
                  "id": "cat",
                  "title": "Catalogue",
                  "kind": "catalogue"
                }
              ],
              "lines": [
                {
                  "id": "alder",
                  "kind": "guide catheter",
                  "source": "cat"
                }
              ],
              "devices": [
                {
                  "id": "alder-6",
                  "line": "alder",
                  "name": "Alder 6 Fr",
                  "size": "6 Fr",
                  "effectiveLength": "100 cm",
                  "sections": [
                    {
                      "name": "shaft",
                      "from": "0 mm",
                      "to": "100 cm",
                      "od": "6 Fr max",
                      "rigid": true,
                      "source": "cat",
                      "page": "3"
                    }
                  ],
                  "lumens": [
                    {
                      "name": "main",
                      "use": "working",
                      "sections": [
                        {
                          "id": "0.070 in min"
                        }
                      ]
                    }
                  ],
                  "claims": [
                    {
                      "type": "largest device",
                      "kinds": ["microcatheter", "guidewire"],
                      "covers": ["in", "out"]
                    }
                  ],
                  "source": "cat",
                  "shade": "blue",
                  "ratios": [1.00, 1e5, -0],
                  "more": {
                    "a": {},
                    "b": [
                      [],
                      {
                        "c": null
                      }
                    ]
                  }
                }
              ]
            }
            """;

    private static final JsonDocuments DOCUMENTS = new JsonDocuments();

    private Samples() {
    }

    /** Reads a text as a file with this name. */
    static ReadResult read(String text, String fileName) {
        return DOCUMENTS.read(bytes(text), fileName);
    }

    /** Reads a device library. */
    static ReadResult library(String text) {
        return read(text, "x.devices.json");
    }

    /** Reads a device library that has these keys after its header. */
    static ReadResult libraryWith(String keys) {
        return library("{\"format\":\"ferrule.devices\",\"version\":1," + keys + "}");
    }

    /** Reads a device library of one device with the id d and these keys. */
    static ReadResult deviceWith(String keys) {
        return libraryWith("\"devices\":[{\"id\":\"d\",\"kind\":\"other\"," + keys + "}]");
    }

    /** Reads a rule set that has these keys after its header. */
    static ReadResult rulesWith(String keys) {
        return read("{\"format\":\"ferrule.rules\",\"version\":1," + keys + "}", "x.rules.json");
    }

    /** Writes the document that was read. */
    static String written(ReadResult result) {
        return new String(DOCUMENTS.write(result.document().orElseThrow()), StandardCharsets.UTF_8);
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
