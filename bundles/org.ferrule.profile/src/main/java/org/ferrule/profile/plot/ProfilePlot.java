/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.look.CurveLook;
import org.ferrule.chart.words.Printable;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Taper;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.LumenPassage;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.ProfiledDevice;
import org.ferrule.profile.curve.Curve;
import org.ferrule.profile.curve.DeviceCurves;
import org.ferrule.profile.curve.Reading;
import org.ferrule.profile.curve.Span;
import org.ferrule.profile.words.FindingWords;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * A comparison as a plot: diameters upwards, stations to the right from distal to proximal. Groups are named for
 * hit-testing: {@code curve:ID} with {@code outer}, {@code wire} or {@code inner:LUMEN} behind a colon, {@code band:ID},
 * {@code mark:ID:NUMBER}, {@code line:L1}, {@code contact:ID:L1:stop} or {@code :worst}, {@code crossing:A:B},
 * {@code legend:ID}.
 */
public final class ProfilePlot {
    private static final double MARGIN_MM = 2;
    private static final double HEADROOM = 1.14;
    private static final double LEAST_PLOT_MM = 20;
    private static final double CENTIMETRES_FROM_MM = 60;

    private final ProfileComparison comparison;
    private final View view;
    private final ProfileWords words;
    private final FindingWords findings;
    private final double widthMm;
    private final double heightMm;
    private final TextStyle style;
    private final PlotLegend legend;
    private final PlotArea area;

    /**
     * Lays out a plot.
     *
     * @param view what of the comparison is in sight
     */
    public ProfilePlot(ProfileComparison comparison, View view, ProfileWords words, double widthMm, double heightMm) {
        this.comparison = comparison;
        this.view = view;
        this.words = words;
        this.findings = new FindingWords(comparison, words);
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.style = TextStyle.ofPt(Math.max(6.5, Math.min(8, 6.5 + (widthMm - 80) / 80))).condensed();
        this.legend = legend();
        this.area = laidOut();
    }

    /** The picture of a comparison. */
    public static Picture picture(ProfileComparison comparison, View view, ProfileWords words, double widthMm,
            double heightMm) {
        return new ProfilePlot(comparison, view, words, widthMm, heightMm).picture();
    }

    private PlotLegend legend() {
        PlotLegend made = new PlotLegend(style, widthMm - 2 * MARGIN_MM);
        for (int i = 0; i < comparison.devices().size(); i++) {
            made.curve(CurveLook.of(i), "legend:" + comparison.devices().get(i).id(), findings.device(i));
        }
        for (int i = 0; i < comparison.lines().size(); i++) {
            made.line("line:" + ProfileWords.lineSign(i), findings.shortLine(i));
        }
        if (comparison.passages().stream().anyMatch(p -> p.stopsAt().isPresent())) {
            made.contact(true, words.phrases().get("plot.stop"));
        }
        if (comparison.passages().stream().anyMatch(LumenPassage::isWorseAtItsWorst)) {
            made.contact(false, words.phrases().get("plot.worst"));
        }
        if (!comparison.crossings().isEmpty()) {
            made.ring(words.phrases().get("plot.crossing"));
        }
        for (int i = 0; i < comparison.devices().size(); i++) {
            findings.notPlaced(i).ifPresent(made::note);
        }
        return made.note(words.phrases().get("plot.note"));
    }

    private PlotArea laidOut() {
        double left = MARGIN_MM + Axes.roomMm(style);
        double top = MARGIN_MM + leading() + 2.5;
        double below = Axes.depthMm(style) + lanesMm() + legend.heightMm() + 2 + MARGIN_MM;
        Box box = new Box(left, top, Math.max(LEAST_PLOT_MM, widthMm - MARGIN_MM - left),
                Math.max(LEAST_PLOT_MM, heightMm - top - below));
        double low = view.diameters().map(d -> d.low().mm()).orElse(0.0);
        double high = view.diameters().map(d -> d.high().mm()).orElseGet(() -> largestInSight() * HEADROOM);
        return new PlotArea(box, view.from().mm(), view.to().mm(), low, high);
    }

    private double leading() {
        return TextMeasure.standard().leadingMm(style);
    }

    private double lanesMm() {
        return comparison.devices().size() * MarkLane.HEIGHT_MM + 1;
    }

    private double largestInSight() {
        List<Double> sizes = new ArrayList<>(List.of(View.LEAST.mm()));
        comparison.devices().stream().flatMap(device -> device.curves().stream())
                .flatMap(curves -> curves.all().stream()).flatMap(curve -> curve.spans().stream())
                .filter(this::isInSight).flatMap(span -> span.diameter().stream()).map(Taper::largest)
                .forEach(figure -> sizes.add(figure.high().mm()));
        comparison.lines().forEach(line -> line.narrowest().map(Figure::high).map(Length::mm).ifPresent(sizes::add));
        return sizes.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    private boolean isInSight(Span span) {
        return span.to().compareTo(view.from()) >= 0 && span.from().compareTo(view.to()) <= 0;
    }

    /** Where stations (in mm from the landmark) and diameters (in mm) lie on the paper. */
    public PlotArea area() {
        return area;
    }

    /** Where a station lies on the paper, from its left edge; may be outside the plot. */
    public double xMm(Length station) {
        return area.x(station.mm());
    }

    /** The station at a place on the paper. */
    public Length station(double xMm) {
        return Length.ofMm(area.along(xMm));
    }

    /** The picture. */
    public Picture picture() {
        PictureBuilder g = new PictureBuilder();
        String title = words.phrases().fill("plot.title", words.from(comparison.landmark()));
        g.lettering(style.bold()).text(MARGIN_MM, MARGIN_MM + TextMeasure.standard().ascentMm(style),
                TextLayout.standard().shorten(title, style.bold(), widthMm - 2 * MARGIN_MM));
        axes(g);
        g.group(Frame.PLAIN.clippedTo(area.box()), this::inside);
        lanes(g);
        legend.draw(g, MARGIN_MM, heightMm - MARGIN_MM - legend.heightMm());
        return g.picture(widthMm, heightMm, Printable.line(title)).described(Printable.line(description()));
    }

    private String description() {
        List<String> found = new ArrayList<>(findings.passages());
        found.addAll(findings.crossings());
        return words.phrases().fill("plot.described", Integer.toString(comparison.devices().size()),
                words.from(comparison.landmark()), String.join("; ", found));
    }

    private void axes(PictureBuilder g) {
        LengthUnit unit = words.lengths().units().primary();
        double unitMm = new Length(unit.thirdNanometres()).mm();
        Axes axes = new Axes(area, style);
        axes.across(g, unitMm, words.phrases().fill("plot.diameter", unit.symbol()));
        boolean inCentimetres = view.length().mm() >= CENTIMETRES_FROM_MM;
        axes.along(g, inCentimetres ? 10 : 1, words.phrases()
                .fill(inCentimetres ? "plot.station.cm" : "plot.station.mm", words.from(comparison.landmark())));
    }

    private void inside(PictureBuilder g) {
        if (area.shows(0)) {
            g.pen(Ink.RULE, 0.25).line(area.x(0), area.box().yMm(), area.x(0), area.box().bottomMm());
        }
        new LumenLines(area, comparison, findings, style).draw(g);
        List<ProfiledDevice> devices = comparison.devices();
        for (int i = 0; view.bands() && i < devices.size(); i++) {
            bands(g, devices.get(i), new CurvePainter(area, CurveLook.of(i)));
        }
        for (int i = 0; i < devices.size(); i++) {
            curves(g, devices.get(i), new CurvePainter(area, CurveLook.of(i)), findings.device(i));
        }
        crossings(g);
        new CurveTags(area, comparison, style).draw(g);
        new ContactSigns(area, comparison, findings, style).draw(g);
    }

    private void bands(PictureBuilder g, ProfiledDevice device, CurvePainter painter) {
        device.curves().ifPresent(curves -> g.group(Frame.named("band:" + device.id()),
                inner -> shown(curves).forEach(curve -> painter.band(inner, curve))));
    }

    private void curves(PictureBuilder g, ProfiledDevice device, CurvePainter painter, String name) {
        device.curves().ifPresent(curves -> shown(curves)
                .forEach(curve -> g.group(Frame.named("curve:" + device.id() + ":" + part(curve)).withTooltip(name),
                        inner -> painter.line(inner, curve))));
    }

    private List<Curve> shown(DeviceCurves curves) {
        return curves.all().stream().filter(curve -> view.lumens() || curve.kind() != Curve.Kind.INNER).toList();
    }

    private static String part(Curve curve) {
        return switch (curve.kind()) {
            case OUTER -> "outer";
            case WITH_WIRE -> "wire";
            case INNER -> "inner:" + curve.name();
        };
    }

    private void crossings(PictureBuilder g) {
        comparison.crossings().forEach(crossing -> {
            String id = "crossing:" + ProfileWords.letter(crossing.first()) + ":"
                    + ProfileWords.letter(crossing.second());
            Length station = crossing.crossing().station();
            comparison.devices().get(crossing.first()).curves().map(curves -> curves.outer().at(station))
                    .filter(Reading.Known.class::isInstance).map(Reading.Known.class::cast)
                    .ifPresent(known -> g.group(Frame.named(id).withTooltip(findings.crossing(crossing)),
                            ring -> ring.noFill().pen(Ink.TEXT, 0.2).circle(xMm(station),
                                    area.y(known.figure().centre().mm()), 0.8)));
        });
    }

    private void lanes(PictureBuilder g) {
        double y = area.box().bottomMm() + Axes.depthMm(style) + 1;
        double baseline = TextMeasure.standard().capHeightMm(style) / 2;
        for (int i = 0; i < comparison.devices().size(); i++) {
            double middle = y + (i + 0.5) * MarkLane.HEIGHT_MM;
            new MarkLane(area, CurveLook.of(i), words, middle).draw(g, comparison.devices().get(i),
                    ProfileWords.letter(i), style, baseline);
        }
    }
}
