/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.Printable;
import org.ferrule.fit.figure.Figure;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextStyle;

/** Paints shafts and walls of lumens along an axial scale. */
final class BodyPainter {
    /** How thick the wall of a lumen is drawn: it stands for a wall of any thickness. */
    static final double WALL_MM = 1.6;
    private static final double LINE_MM = 0.25;

    private final AxialScale axis;
    private final double radial;
    private final TextStyle lettering;

    /**
     * A painter.
     *
     * @param radial how many millimetres of paper stand for one millimetre of diameter
     * @param lettering of question marks
     */
    BodyPainter(AxialScale axis, double radial, TextStyle lettering) {
        this.axis = axis;
        this.radial = radial;
        this.lettering = lettering;
    }

    double radial() {
        return radial;
    }

    /** A shaft section: nominal outline, with a band where the outline may lie. */
    void shaft(PictureBuilder g, Band band, Rest rest, String tooltip) {
        g.group(Frame.named("section:" + Printable.line(band.name())).withTooltip(Printable.line(tooltip)), s -> {
            s.noPen().fill(DrawingInks.TOLERANCE).polygon(outline(band, rest, f -> f.high().mm()));
            s.fill(band.rigid() ? Fill.of(DrawingInks.SHAFT, rigid()) : Fill.of(DrawingInks.SHAFT))
                    .polygon(outline(band, rest, f -> f.low().mm()));
            s.noFill().pen(DrawingInks.SHAFT_LINE, LINE_MM).polygon(outline(band, rest, f -> f.centre().mm()));
        });
    }

    /** What lies still: its nominal outline only, pale. */
    void still(PictureBuilder g, Band band, Rest rest) {
        g.fill(DrawingInks.LUMEN).pen(Ink.MUTED, LINE_MM).polygon(outline(band, rest, f -> f.centre().mm()));
    }

    /** The wall of a tube that lies in a lumen, as thick as it is. */
    void tube(PictureBuilder g, Band band, double centreY) {
        g.fill(wall(Ink.PAPER)).pen(DrawingInks.SHAFT_LINE, LINE_MM)
                .polygon(outline(band, Rest.centred(centreY), f -> f.centre().mm()));
    }

    private static Hatch rigid() {
        return new Hatch(Hatch.Pattern.FALLING, DrawingInks.SHAFT_LINE, 1.1, 0.15);
    }

    /** A stretch of unknown diameter: a broken outline with a question mark, as high as is guessed from neighbours. */
    void unknown(PictureBuilder g, Band band, Rest rest, double guessMm, String id, String tooltip) {
        double height = guessMm * radial;
        double x0 = axis.x(band.from());
        double x1 = axis.x(band.to());
        g.group(Frame.named(id + ":" + Printable.line(band.name())).withTooltip(Printable.line(tooltip)), s -> {
            s.fill(DrawingInks.LUMEN).pen(Stroke.of(DrawingInks.SHAFT_LINE, LINE_MM).dashed(Dash.DASHED))
                    .rect(x0, rest.top(height), x1 - x0, height);
            s.lettering(lettering.bold()).textMiddle((x0 + x1) / 2,
                    (rest.top(height) + rest.bottom(height)) / 2 + lettering.sizeMm() * 0.36, "?");
        });
    }

    /** Both walls of a lumen around its inside, with bands where they may lie. */
    void lumen(PictureBuilder g, Band band, double centreY, String tooltip) {
        Rest rest = Rest.centred(centreY);
        g.group(Frame.named("lumen:" + Printable.line(band.name())).withTooltip(Printable.line(tooltip)), s -> {
            s.noPen().fill(DrawingInks.LUMEN).polygon(outline(band, rest, f -> f.high().mm()));
            for (int side : new int[] { -1, 1 }) {
                s.fill(wall(Ink.PAPER)).polygon(between(band, centreY, side, f -> f.high().mm() / 2 * radial,
                        f -> f.high().mm() / 2 * radial + WALL_MM));
                s.fill(DrawingInks.TOLERANCE).polygon(between(band, centreY, side, f -> f.low().mm() / 2 * radial,
                        f -> f.high().mm() / 2 * radial));
            }
            s.noFill().pen(DrawingInks.SHAFT_LINE, LINE_MM);
            for (int side : new int[] { -1, 1 }) {
                s.polyline(edge(band, f -> centreY + side * f.centre().mm() / 2 * radial));
                s.polyline(edge(band, f -> centreY + side * (f.high().mm() / 2 * radial + WALL_MM)));
            }
        });
    }

    private static Fill wall(Ink ground) {
        return Fill.of(ground, new Hatch(Hatch.Pattern.RISING, DrawingInks.WALL, 0.9, 0.16));
    }

    /** The inside of a lumen within a shaft. */
    void bore(PictureBuilder g, Band band, double centreY, String id) {
        g.group(Frame.named(id), s -> s.fill(DrawingInks.LUMEN).pen(DrawingInks.WALL, 0.18)
                .polygon(outline(band, Rest.centred(centreY), f -> f.centre().mm())));
    }

    private Point[] outline(Band band, Rest rest, ToDoubleFunction<Figure> diameter) {
        List<Point> points = new ArrayList<>(List.of(edge(band, f -> rest.top(diameter.applyAsDouble(f) * radial))));
        List<Point> below = new ArrayList<>(
                List.of(edge(band, f -> rest.bottom(diameter.applyAsDouble(f) * radial))));
        Collections.reverse(below);
        points.addAll(below);
        return points.toArray(Point[]::new);
    }

    private Point[] between(Band band, double centreY, int side, ToDoubleFunction<Figure> inner,
            ToDoubleFunction<Figure> outer) {
        List<Point> points = new ArrayList<>(List.of(edge(band, f -> centreY + side * inner.applyAsDouble(f))));
        List<Point> back = new ArrayList<>(List.of(edge(band, f -> centreY + side * outer.applyAsDouble(f))));
        Collections.reverse(back);
        points.addAll(back);
        return points.toArray(Point[]::new);
    }

    private Point[] edge(Band band, ToDoubleFunction<Figure> y) {
        return axis.bends(band.from(), band.to()).stream()
                .map(place -> new Point(axis.x(place), y.applyAsDouble(band.figureAt(place).orElseThrow())))
                .toArray(Point[]::new);
    }

    /** The jagged gaps that leave lengths out, over all that was painted between two heights. */
    void gaps(PictureBuilder g, double top, double bottom) {
        for (double x : axis.gaps()) {
            List<Point> left = jagged(x, top, bottom);
            List<Point> area = new ArrayList<>(left);
            List<Point> right = new ArrayList<>(jagged(x + axis.gapMm(), top, bottom));
            Collections.reverse(right);
            area.addAll(right);
            g.noPen().fill(Ink.PAPER).polygon(area.toArray(Point[]::new));
            g.noFill().pen(DrawingInks.WALL, 0.2).polyline(left.toArray(Point[]::new));
            g.polyline(right.toArray(Point[]::new));
        }
    }

    private static List<Point> jagged(double x, double top, double bottom) {
        List<Point> points = new ArrayList<>();
        int teeth = Math.max(2, 2 * (int) Math.round((bottom - top) / 4));
        for (int i = 0; i <= teeth; i++) {
            points.add(new Point(x + (i % 2 == 0 ? -0.35 : 0.35), top + (bottom - top) * i / teeth));
        }
        return points;
    }
}
