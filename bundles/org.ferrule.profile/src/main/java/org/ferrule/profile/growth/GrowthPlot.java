/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.growth;

import java.util.List;
import java.util.stream.Stream;

import org.ferrule.balloon.Inflation;
import org.ferrule.chart.look.CurveLook;
import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.plot.Axes;
import org.ferrule.profile.plot.PlotArea;
import org.ferrule.profile.plot.PlotLegend;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * Growth curves as a plot: pressure to the right, diameter upwards. Groups are named for hit-testing: {@code growth:ID},
 * {@code row:ID:NUMBER} for printed rows, {@code nominal:ID}, {@code rated:ID}, {@code legend:ID}.
 */
public final class GrowthPlot {
    private static final double MARGIN_MM = 2;
    private static final double LEAST_PLOT_MM = 20;
    private static final double LINE_MM = 0.45;
    private static final double EMPTY_MM = 1;
    private static final double EMPTY_PRESSURE = 20;

    private final GrowthComparison growth;
    private final ProfileWords words;
    private final GrowthWords sentences;
    private final double widthMm;
    private final double heightMm;
    private final TextStyle style;
    private final PlotLegend legend;
    private final PlotArea area;

    /** Lays out a plot. */
    public GrowthPlot(GrowthComparison growth, ProfileWords words, double widthMm, double heightMm) {
        this.growth = growth;
        this.words = words;
        this.sentences = new GrowthWords(growth, words);
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.style = TextStyle.ofPt(Math.max(6.5, Math.min(8, 6.5 + (widthMm - 80) / 80))).condensed();
        this.legend = legend();
        this.area = laidOut();
    }

    /** The picture of some growth curves. */
    public static Picture picture(GrowthComparison growth, ProfileWords words, double widthMm, double heightMm) {
        return new GrowthPlot(growth, words, widthMm, heightMm).picture();
    }

    private PlotLegend legend() {
        PlotLegend made = new PlotLegend(style, widthMm - 2 * MARGIN_MM);
        for (int i = 0; i < growth.balloons().size(); i++) {
            if (growth.balloons().get(i).table().isPresent()) {
                made.curve(CurveLook.of(i), "legend:" + growth.balloons().get(i).id(), sentences.balloon(i));
            }
        }
        if (growth.hasCurves()) {
            made.sign(words.phrases().get("growth.printed"), (g, x, y) -> row(g, x, y, Ink.TEXT));
            made.sign(words.phrases().get("growth.nominal"), (g, x, y) -> nominal(g, x, y, Ink.TEXT));
            made.sign(words.phrases().get("growth.ratedBurst"), (g, x, y) -> rated(g, x, y, Ink.TEXT));
        }
        sentences.notes().forEach(made::note);
        return made;
    }

    private PlotArea laidOut() {
        double left = MARGIN_MM + Axes.roomMm(style);
        double top = MARGIN_MM + TextMeasure.standard().leadingMm(style) + 2.5;
        double below = Axes.depthMm(style) + legend.heightMm() + 2 + MARGIN_MM;
        Box box = new Box(left, top, Math.max(LEAST_PLOT_MM, widthMm - MARGIN_MM - 3 - left),
                Math.max(LEAST_PLOT_MM, heightMm - top - below));
        double[] sizes = points().mapToDouble(point -> point.diameter().mm()).sorted().toArray();
        double low = sizes.length == 0 ? 0 : sizes[0];
        double high = sizes.length == 0 ? EMPTY_MM : sizes[sizes.length - 1];
        double room = Math.max((high - low) * 0.08, high * 0.02);
        double most = points().mapToDouble(this::pressure).max().orElse(EMPTY_PRESSURE);
        return new PlotArea(box, 0, most * 1.06, Math.max(0, low - room), high + room);
    }

    private Stream<Inflation.Point> points() {
        return growth.balloons().stream().flatMap(balloon -> balloon.corners().stream());
    }

    private double pressure(Inflation.Point point) {
        return point.in(growth.unit());
    }

    /** Where pressures (in the unit of the comparison) and diameters (in mm) lie on the paper. */
    public PlotArea area() {
        return area;
    }

    /** The picture. */
    public Picture picture() {
        PictureBuilder g = new PictureBuilder();
        String title = words.phrases().get("growth.title");
        g.lettering(style.bold()).text(MARGIN_MM, MARGIN_MM + TextMeasure.standard().ascentMm(style),
                TextLayout.standard().shorten(title, style.bold(), widthMm - 2 * MARGIN_MM));
        LengthUnit unit = words.lengths().units().primary();
        Axes axes = new Axes(area, style);
        axes.across(g, new Length(unit.thirdNanometres()).mm(), words.phrases().fill("growth.diameter", unit.symbol()));
        axes.along(g, 1, words.phrases().fill("growth.pressure", growth.unit().symbol()));
        for (int i = 0; i < growth.balloons().size(); i++) {
            BalloonGrowth balloon = growth.balloons().get(i);
            int number = i;
            g.group(Frame.named("growth:" + balloon.id()).withTooltip(sentences.pressures(i)),
                    inner -> curve(inner, balloon, number));
        }
        legend.draw(g, MARGIN_MM, heightMm - MARGIN_MM - legend.heightMm());
        return g.picture(widthMm, heightMm, Printable.line(title)).described(Printable.line(description()));
    }

    private String description() {
        List<String> lines = Stream.iterate(0, i -> i + 1).limit(growth.balloons().size())
                .map(i -> sentences.refusal(i).orElseGet(() -> sentences.pressures(i))).toList();
        String head = lines.size() == 1 ? words.phrases().get("growth.described.one")
                : words.phrases().fill("growth.described", Integer.toString(lines.size()));
        return head + ": " + String.join("; ", lines);
    }

    private void curve(PictureBuilder g, BalloonGrowth balloon, int number) {
        List<Inflation.Point> corners = balloon.corners();
        if (corners.isEmpty()) {
            return;
        }
        CurveLook look = CurveLook.of(number);
        Outline line = Outline.from(x(corners.get(0)), y(corners.get(0)));
        corners.stream().skip(1).forEach(point -> line.lineTo(x(point), y(point)));
        g.noFill().pen(look.stroke(LINE_MM)).path(line);
        for (int i = 0; i < balloon.printed().size(); i++) {
            Inflation.Point point = balloon.printed().get(i);
            g.group(Frame.named("row:" + balloon.id() + ":" + i), inner -> row(inner, x(point), y(point), look.ink()));
        }
        balloon.atNominal().ifPresent(point -> g.group(Frame.named("nominal:" + balloon.id()),
                inner -> nominal(inner, x(point), y(point), look.ink())));
        balloon.atRatedBurst().ifPresent(point -> g.group(Frame.named("rated:" + balloon.id()),
                inner -> rated(inner, x(point), y(point), look.ink())));
        Inflation.Point last = corners.get(corners.size() - 1);
        g.lettering(style.bold().in(look.ink())).text(x(last) + 1.6,
                y(last) + TextMeasure.standard().capHeightMm(style) / 2, ProfileWords.letter(number));
    }

    private double x(Inflation.Point point) {
        return area.x(pressure(point));
    }

    private double y(Inflation.Point point) {
        return area.y(point.diameter().mm());
    }

    private static void row(PictureBuilder g, double x, double y, Ink ink) {
        g.noPen().fill(ink).circle(x, y, 0.55);
    }

    private static void nominal(PictureBuilder g, double x, double y, Ink ink) {
        double size = 1.3;
        g.noFill().pen(ink, 0.35).polygon(new Point(x, y - size),
                new Point(x + size, y), new Point(x, y + size),
                new Point(x - size, y));
    }

    private static void rated(PictureBuilder g, double x, double y, Ink ink) {
        g.pen(ink, 0.6).line(x, y - 1.8, x, y + 1.8);
    }
}
