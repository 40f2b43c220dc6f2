/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import org.ferrule.chart.look.CurveLook;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Taper;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.profile.curve.Curve;
import org.ferrule.profile.curve.Span;
import org.ferrule.quantity.Length;

/** Draws the curves of one device: bands first, lines over them; nothing where a diameter is unknown. */
final class CurvePainter {
    private static final double THICK_MM = 0.5;
    private static final double THIN_MM = 0.25;
    private static final double EDGE_MM = 0.1;

    private final PlotArea area;
    private final CurveLook look;

    CurvePainter(PlotArea area, CurveLook look) {
        this.area = area;
        this.look = look;
    }

    /** The intervals round a curve. */
    void band(PictureBuilder g, Curve curve) {
        for (Span span : inSight(curve)) {
            span.diameter().filter(CurvePainter::isWide).ifPresent(taper -> band(g, span, taper));
        }
    }

    private static boolean isWide(Taper taper) {
        return !taper.start().low().equals(taper.start().high()) || !taper.end().low().equals(taper.end().high());
    }

    private void band(PictureBuilder g, Span span, Taper taper) {
        Point[] low = ends(span, taper, Figure::low);
        Point[] high = ends(span, taper, Figure::high);
        g.noPen().fill(Fill.of(look.hatch())).polygon(low[0], low[1], high[1], high[0]);
        Stroke edge = Stroke.of(look.ink(), EDGE_MM).dashed(span.assumed() ? Dash.DOTTED : Dash.SOLID);
        g.noFill().pen(edge).polyline(low).polyline(high);
    }

    private Point[] ends(Span span, Taper taper, Function<Figure, Length> lane) {
        return new Point[] { at(span.from(), lane.apply(taper.start())), at(span.to(), lane.apply(taper.end())) };
    }

    private Point at(Length station, Length diameter) {
        return new Point(area.x(station.mm()), area.y(diameter.mm()));
    }

    /** The centre of a curve: a line for each run of known spans that touch, steps upright. */
    void line(PictureBuilder g, Curve curve) {
        g.noFill().pen(look.stroke(curve.kind() == Curve.Kind.OUTER ? THICK_MM : THIN_MM));
        List<Point> points = new ArrayList<>();
        Length end = null;
        for (Span span : inSight(curve)) {
            boolean goesOn = span.from().equals(end);
            if (!goesOn || span.diameter().isEmpty()) {
                draw(g, points);
            }
            span.diameter().ifPresent(taper -> points.addAll(List.of(ends(span, taper, Figure::centre))));
            end = span.to();
        }
        draw(g, points);
    }

    private static void draw(PictureBuilder g, List<Point> points) {
        if (points.size() > 1) {
            Outline line = Outline.from(points.get(0).xMm(), points.get(0).yMm());
            points.stream().skip(1).forEach(point -> line.lineTo(point.xMm(), point.yMm()));
            g.path(line);
        }
        points.clear();
    }

    private List<Span> inSight(Curve curve) {
        return curve.spans().stream()
                .filter(span -> span.to().mm() >= area.left() && span.from().mm() <= area.right()).toList();
    }

    /** A letter on the paper that says which curve it is. */
    void tag(PictureBuilder g, Point place, String letter, double radiusMm, double baselineMm) {
        g.fill(Ink.PAPER).pen(look.ink(), 0.25).circle(place.xMm(), place.yMm(), radiusMm);
        g.textMiddle(place.xMm(), place.yMm() + baselineMm, letter);
    }
}
