/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

/** The sample library with sections that are not round. */
final class Shapes {

    private static final String LINE_SHAFT = """
                      "od": "0.86 mm"
                    }
                  ],
            """;
    private static final String OVAL_LINE_SHAFT = """
                      "oval": {
                        "width": "0.86 mm",
                        "height": "0.70 mm"
                      }
                    }
                  ],
                  "lumens": [
                    {
                      "name": "wire",
                      "use": "wire",
                      "sections": [
                        {
                          "name": "narrow",
                          "from": "0 mm",
                          "to": "700 mm",
                          "id": "0.40 mm"
                        },
                        {
                          "name": "wide",
                          "from": "700 mm",
                          "to": "1420 mm",
                          "id": "0.42 mm"
                        }
                      ]
                    }
                  ],
            """;
    private static final String CROWN_DEVICE = """
                },
                {
                  "id": "crown",
                  "name": "Crown",
                  "kind": "other",
                  "effectiveLength": "20 mm",
                  "sections": [
                    {
                      "name": "crown",
                      "from": "0 mm",
                      "to": "20 mm",
                      "discs": [
                        {
                          "x": "0 mm",
                          "y": "0 mm",
                          "diameter": "1.00 mm"
                        },
                        {
                          "x": "0.40 mm",
                          "y": "0 mm",
                          "diameter": "0.80 mm"
                        }
                      ]
                    }
                  ]
                }
              ]
            }
            """;
    /** A line whose shaft is oval, round a lumen of two sections; a guide with an oval body; a crown of two discs. */
    static final String SAMPLE = withCrown(Libraries.SAMPLE.replace(LINE_SHAFT, OVAL_LINE_SHAFT).replace("""
                      "od": "2.06 mm"
            """, """
                      "oval": {
                        "width": "2.06 mm max",
                        "height": "1.90 mm"
                      }
            """));

    /** A line whose shaft is composed of two discs. */
    static final String DISC_LINE = Libraries.SAMPLE.replace(LINE_SHAFT, """
                      "discs": [
                        {
                          "x": "0 mm",
                          "y": "0 mm",
                          "diameter": "0.60 mm"
                        },
                        {
                          "x": "0.40 mm",
                          "y": "0 mm",
                          "diameter": "0.40 mm"
                        }
                      ]
                    }
                  ],
            """);

    private Shapes() {
    }

    private static String withCrown(String text) {
        return text.substring(0, text.lastIndexOf("    }\n  ]"))
                + CROWN_DEVICE.substring(CROWN_DEVICE.indexOf("    }"));
    }
}
