/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;

import org.ferrule.engine.LargeLibrary;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.AssembledChart;
import org.ferrule.engine.chart.ChartAssembler;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.FitChart;
import org.junit.jupiter.api.Test;

/** Whoever reads a chart is told all conditions under which it holds. */
class ChartConditionWordsTest {

    @Test
    void saysThatADevicePassesAlone() {
        assertEquals(List.of("tip first, one device at a time", "all the way in, hub to hub",
                "each over the wire that its papers name"), words("{}"));
    }

    @Test
    void saysEveryCondition() {
        assertEquals(List.of("tip first, with what is already in place",
                "to 12.0 cm beyond the tip of the guide extension",
                "each over the wire that its papers name",
                "beside \u201cb0\u201d, its tip at the outer tip, over a wire of 0.36 mm",
                "beside \u201cb1\u201d, its tip 30 mm inside the outer tip, over a wire of 0.36 mm, used before",
                "through the guide extension \u201cg0\u201d, its tip 80 mm beyond the outer tip",
                "round bends of the lumen with a radius of 20 mm, 15 mm (90\u00b0)",
                "round bends of the vessel with a radius of 12.7 mm where it is 3.5 mm wide",
                "going in again after use, with the profile that use leaves"),
                words("""
                        {"reach": "12 cm", "inside": [{"device": "b0"},
                          {"device": "b1", "tipAhead": "-3 cm", "used": true}],
                         "through": {"extension": "g0", "protrusion": "8 cm"},
                         "bends": [{"radius": "20 mm"}, {"where": "vessel", "radius": "0.5 in", "vesselDiameter": "3.5 mm"},
                          {"radius": "15 mm", "angleDegrees": 90}], "afterInflation": true}"""));
    }

    private static List<String> words(String conditions) {
        String json = """
                {"format": "ferrule.chart", "version": 1, "libraries": ["large.devices.json"],
                 "rules": "r.rules.json", "outer": {"devices": ["g1"]}, "inner": {"devices": ["b2"]},
                 "conditions":\s""" + conditions + "}";
        FitChart chart = (FitChart) new JsonDocuments().read(json.getBytes(StandardCharsets.UTF_8), "x.chart.json")
                .document().orElseThrow();
        AssembledChart assembled = new ChartAssembler(List.of()).assemble(chart,
                Catalogue.of(List.of(new LibraryReader("large.devices.json", LargeLibrary.of(2, 3)))),
                RuleTranslator.translate(LargeLibrary.rules()));
        return ChartConditionWords.of(chart, assembled);
    }
}
