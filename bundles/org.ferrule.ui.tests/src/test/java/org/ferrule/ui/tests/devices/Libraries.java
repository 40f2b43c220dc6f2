/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Libraries for tests; their makers and devices are invented. */
final class Libraries {

    static final String FILE = "sample.devices.json";

    /** A line with two sizes, one of which overrides a section, and a guide without a line; in canonical form. */
    static final String SAMPLE = """
            {
              "format": "ferrule.devices",
              "version": 1,
              "title": "Sample library",
              "sources": [
                {
                  "id": "ifu",
                  "title": "Instructions for use (invented)",
                  "kind": "instructions for use"
                }
              ],
              "lines": [
                {
                  "id": "ost-balloon",
                  "name": "Osterbrook balloon",
                  "kind": "balloon catheter",
                  "maker": "Osterbrook Devices",
                  "effectiveLength": "142 cm",
                  "takesWire": "0.014 in",
                  "sections": [
                    {
                      "name": "tip",
                      "from": "0 mm",
                      "to": "4 mm",
                      "od": "0.43 mm"
                    },
                    {
                      "name": "balloon",
                      "from": "4 mm"
                    },
                    {
                      "name": "shaft",
                      "from": "24 mm",
                      "to": "142 cm",
                      "od": "0.86 mm"
                    }
                  ],
                  "source": "ifu",
                  "page": "3"
                }
              ],
              "devices": [
                {
                  "id": "ost-2.0",
                  "line": "ost-balloon",
                  "size": "2.0 x 20 mm",
                  "sections": [
                    {
                      "name": "balloon",
                      "to": "24 mm",
                      "od": "0.90 mm"
                    }
                  ]
                },
                {
                  "id": "ost-2.5",
                  "line": "ost-balloon",
                  "size": "2.5 x 20 mm",
                  "sections": [
                    {
                      "name": "balloon",
                      "to": "24 mm",
                      "od": "0.94 mm"
                    }
                  ]
                },
                {
                  "id": "hol-6",
                  "name": "Holmgard guide 6 Fr",
                  "kind": "guide catheter",
                  "maker": "Holmgard Guides",
                  "size": "6 Fr",
                  "effectiveLength": "100 cm",
                  "sections": [
                    {
                      "name": "tip",
                      "from": "0 mm",
                      "to": "50 mm",
                      "od": "2.00 mm"
                    },
                    {
                      "name": "body",
                      "from": "50 mm",
                      "to": "100 cm",
                      "od": "2.06 mm"
                    }
                  ],
                  "lumens": [
                    {
                      "name": "guide",
                      "use": "working",
                      "sections": [
                        {
                          "id": "0.070 in min"
                        }
                      ]
                    }
                  ]
                }
              ]
            }
            """;

    /** A line of balloons that differ in diameter by half a millimetre, named evenly; one is longer. */
    static final String SIZES = """
            {
              "format": "ferrule.devices",
              "version": 1,
              "title": "Sizes",
              "lines": [
                {
                  "id": "ost",
                  "kind": "balloon catheter",
                  "maker": "Osterbrook Devices"
                }
              ],
              "devices": [
            """ + String.join(",\n", size("1.50", 15), size("2.00", 15), size("2.50", 15), size("3.00", 15),
            size("2.50", 20)) + "\n  ]\n}\n";

    private Libraries() {
    }

    private static String size(String diameter, int length) {
        String code = diameter.replace(".", "");
        return """
                {
                  "id": "ost-%s-%d",
                  "line": "ost",
                  "name": "Osterbrook %s x %d mm",
                  "model": "OB%s%d",
                  "size": "%s x %d mm",
                  "balloon": {
                    "diameter": "%s mm",
                    "length": "%d mm"
                  }
                }""".formatted(code, length, diameter, length, code, length, diameter, length, diameter, length);
    }

    /** A library of so many guides. */
    static String large(int devices) {
        String each = IntStream.range(0, devices).mapToObj(Libraries::guide).collect(Collectors.joining(",\n"));
        return """
                {
                  "format": "ferrule.devices",
                  "version": 1,
                  "title": "Large library",
                  "devices": [
                """ + each + "\n  ]\n}\n";
    }

    private static String guide(int number) {
        return """
                {
                  "id": "guide-%d",
                  "name": "Guide number %d",
                  "kind": "guide catheter",
                  "effectiveLength": "100 cm",
                  "sections": [
                    {
                      "name": "body",
                      "from": "0 mm",
                      "to": "100 cm",
                      "od": "%d.%02d mm"
                    }
                  ]
                }""".formatted(number, number, 1 + number % 2, number % 100);
    }
}
