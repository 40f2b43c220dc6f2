/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.fit.figure.Figure;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.words.FindingWords;
import org.ferrule.profile.words.ProfileWords;

/** The narrowest places of chosen lumens as lines across the plot, with their intervals. */
final class LumenLines {
    private final PlotArea area;
    private final ProfileComparison comparison;
    private final FindingWords words;
    private final TextStyle style;

    LumenLines(PlotArea area, ProfileComparison comparison, FindingWords words, TextStyle style) {
        this.area = area;
        this.comparison = comparison;
        this.words = words;
        this.style = style.in(DrawingInks.SHAFT_LINE);
    }

    void draw(PictureBuilder g) {
        for (int i = 0; i < comparison.lines().size(); i++) {
            int number = i;
            comparison.lines().get(i).narrowest()
                    .ifPresent(figure -> g.group(
                            Frame.named("line:" + ProfileWords.lineSign(number)).withTooltip(words.line(number)),
                            inner -> draw(inner, figure, number)));
        }
    }

    private void draw(PictureBuilder g, Figure figure, int number) {
        double left = area.box().xMm();
        double right = area.box().rightMm();
        double low = area.y(figure.low().mm());
        double high = area.y(figure.high().mm());
        if (low > high) {
            g.noPen().fill(Fill.of(new Hatch(Hatch.Pattern.LATTICE, DrawingInks.WALL, 1.1, 0.08)))
                    .rect(left, high, right - left, low - high);
        }
        double middle = area.y(figure.centre().mm());
        g.noFill().pen(Stroke.of(DrawingInks.WALL, 0.4).dashed(Dash.CENTRE_LINE)).line(left, middle, right, middle);
        double width = TextMeasure.standard().widthMm("L10", style) + 1;
        g.lettering(style.bold()).textEnd(right - 1 - number % 4 * width, middle - 0.7, ProfileWords.lineSign(number));
    }
}
