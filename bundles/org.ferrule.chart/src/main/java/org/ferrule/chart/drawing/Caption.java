/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.words.Phrases;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;

/** Says to what scale a longitudinal drawing is, and what its signs mean. */
final class Caption {
    private static final double ONE_SCALE = 0.05;

    private final Phrases phrases;
    private final List<String> parts = new ArrayList<>();
    private final String exaggeration;
    private final String briefExaggeration;

    Caption(Phrases phrases, double radial, AxialScale axis) {
        this.phrases = phrases;
        double times = radial / axis.mmPerMm();
        String number = new BigDecimal(times).round(new MathContext(2)).stripTrailingZeros().toPlainString();
        boolean oneScale = Math.abs(times - 1) < ONE_SCALE;
        this.exaggeration = oneScale ? phrases.get("drawing.oneScale") : phrases.fill("drawing.exaggerated", number);
        this.briefExaggeration = oneScale ? exaggeration : phrases.fill("drawing.exaggerated.brief", number);
        if (!axis.gaps().isEmpty()) {
            parts.add(phrases.get("drawing.gaps"));
        }
    }

    /** Adds a sign that is explained where there is room. */
    Caption with(String key, boolean shown) {
        if (shown) {
            parts.add(phrases.get(key));
        }
        return this;
    }

    /** Draws as much as there is room for; the exaggeration is always said. */
    void draw(PictureBuilder g, Zones zones) {
        TextLayout layout = TextLayout.standard();
        double width = zones.right() - zones.left();
        List<String> lines = lines(layout, zones, exaggeration, width);
        if (lines.size() > zones.captionRows()) {
            lines = lines(layout, zones, briefExaggeration, width);
        }
        while (lines.size() > zones.captionRows() && !parts.isEmpty()) {
            parts.remove(parts.size() - 1);
            lines = lines(layout, zones, briefExaggeration, width);
        }
        g.lettering(zones.smallStyle()).lines(zones.left(), zones.captionBaseline(),
                Zones.leading(zones.smallStyle()), lines);
    }

    private List<String> lines(TextLayout layout, Zones zones, String first, double width) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(parts);
        return layout.wrap(String.join("; ", all), zones.smallStyle(), width);
    }
}
