/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Documents small enough to work everything out by hand: two guides, two rods, spans of 0.01 mm, 0.025 mm required. */
record SmallLaboratory(Path library, Path rules, Path chart) {
    private static final String LIBRARY = """
            {
              "format": "ferrule.devices", "version": 1, "title": "Small",
              "devices": [
                %s,
                %s,
                %s,
                %s
              ]
            }
            """;
    private static final String RULES = """
            {
              "format": "ferrule.rules", "version": 1, "title": "Small rules", "revision": "2",
              "spans": [
                {"figure": "inner diameter", "below": "0.01 mm", "above": "0.01 mm"},
                {"figure": "outer diameter", "below": "0.01 mm", "above": "0.01 mm"},
                {"figure": "outer diameter", "kinds": ["microcatheter"], "below": "0.01 mm", "above": "0.05 mm",
                 "runsLow": true}
              ],
              "clearances": [{"required": "0.025 mm"}],
              "confidence": 0.95, "coverage": 0.99
            }
            """;
    private static final String CHART = """
            {
              "format": "ferrule.chart", "version": 1, "title": "Small chart",
              "libraries": ["small.devices.json"], "rules": "small.rules.json",
              "outer": {"kinds": ["guide catheter"]},
              "inner": {"kinds": ["inner catheter", "microcatheter"]}
            }
            """;

    static SmallLaboratory in(Path folder) throws IOException {
        return new SmallLaboratory(
                Files.writeString(folder.resolve("small.devices.json"),
                        LIBRARY.formatted(guide("narrow", "6 Fr", "1.778 mm sd 0.004"),
                                guide("wide", "7 Fr", "2.0 mm"), rod("rod", "inner catheter", "1.74 mm sd 0.003"),
                                rod("micro", "microcatheter", "1.70 mm"))),
                Files.writeString(folder.resolve("small.rules.json"), RULES),
                Files.writeString(folder.resolve("small.chart.json"), CHART));
    }

    private static String guide(String id, String size, String lumen) {
        return """
                {"id": "%s", "name": "%s", "kind": "guide catheter", "size": "%s", "effectiveLength": "100 cm",
                 "lumens": [{"name": "guide", "use": "working", "sections": [{"id": "%s"}]}]}"""
                .formatted(id, id, size, lumen);
    }

    private static String rod(String id, String kind, String diameter) {
        return """
                {"id": "%s", "name": "%s", "kind": "%s", "effectiveLength": "120 cm",
                 "sections": [{"name": "shaft", "from": "0 mm", "to": "120 cm", "od": "%s"}]}"""
                .formatted(id, id, kind, diameter);
    }
}
