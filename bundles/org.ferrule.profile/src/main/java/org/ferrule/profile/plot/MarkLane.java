/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import org.ferrule.chart.look.CurveLook;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.ProfiledDevice;
import org.ferrule.profile.curve.DeviceCurves;
import org.ferrule.profile.curve.Mark;
import org.ferrule.profile.curve.Span;
import org.ferrule.profile.words.ProfileWords;

/** One device as a bar below the plot: how far it reaches, what cannot bend, markers, ports, and what is unknown. */
final class MarkLane {
    /** The height of a lane. */
    static final double HEIGHT_MM = 3.4;
    private static final double LINE_MM = 0.3;
    private static final double THIN_MM = 0.5;

    private final PlotArea area;
    private final CurveLook look;
    private final ProfileWords words;
    private final double y;

    /** A lane with its middle at a height. */
    MarkLane(PlotArea area, CurveLook look, ProfileWords words, double y) {
        this.area = area;
        this.look = look;
        this.words = words;
        this.y = y;
    }

    void draw(PictureBuilder g, ProfiledDevice device, String letter, TextStyle style, double baselineMm) {
        g.lettering(style.bold().in(look.ink())).textEnd(area.box().xMm() - 1, y + baselineMm, letter);
        device.curves().ifPresent(curves -> g.group(
                Frame.PLAIN.clippedTo(new Box(area.box().xMm(), y - HEIGHT_MM / 2, area.box().widthMm(), HEIGHT_MM)),
                inner -> draw(inner, curves, device.id(), style, baselineMm)));
    }

    private void draw(PictureBuilder g, DeviceCurves curves, String id, TextStyle style, double baselineMm) {
        for (Span span : curves.outer().spans()) {
            Dash dash = span.diameter().isPresent() ? Dash.SOLID : Dash.DOTTED;
            g.pen(Stroke.of(look.ink(), LINE_MM).dashed(dash)).line(area.x(span.from().mm()), y,
                    area.x(span.to().mm()), y);
            if (span.diameter().isEmpty()) {
                double middle = (Math.max(area.left(), span.from().mm()) + Math.min(area.right(), span.to().mm())) / 2;
                g.lettering(style.bold().in(look.ink())).textMiddle(area.x(middle), y + baselineMm, "?");
            }
        }
        for (int i = 0; i < curves.marks().size(); i++) {
            Mark mark = curves.marks().get(i);
            g.group(Frame.named("mark:" + id + ":" + i).withTooltip(words.mark(mark)), inner -> draw(inner, mark));
        }
    }

    private void draw(PictureBuilder g, Mark mark) {
        double from = area.x(mark.from().mm());
        double to = area.x(mark.to().mm());
        switch (mark.kind()) {
            case RIGID -> g.noPen().fill(look.ink()).rect(from, y - 0.6, Math.max(THIN_MM, to - from), 1.2);
            case MARKER -> g.fill(Ink.TEXT).pen(Ink.PAPER, 0.15).rect(from, y - 1.2, Math.max(THIN_MM, to - from), 2.4);
            default -> g.noPen().fill(look.ink()).polygon(new Point(from, y), new Point(from - 1.1, y - 1.7),
                    new Point(from + 1.1, y - 1.7));
        }
    }
}
