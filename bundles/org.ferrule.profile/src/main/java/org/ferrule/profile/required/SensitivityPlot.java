/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.required;

import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.chart.look.CurveLook;
import org.ferrule.chart.words.Printable;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.sensitivity.Influence;
import org.ferrule.picture.Box;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.plot.Axes;
import org.ferrule.profile.plot.PlotArea;
import org.ferrule.profile.plot.PlotLegend;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Dimension;

/**
 * Which figures and statements verdicts rest on, as bars, the weightiest first. Groups are named {@code bar:NUMBER} for
 * hit-testing.
 */
public final class SensitivityPlot {
    private static final double MARGIN_MM = 2;
    private static final double ROW_MM = 7.5;
    private static final double BAR_MM = 2.4;
    private static final double NAME_SHARE = 0.46;

    private final List<Influence> ranked;
    private final ProfileWords words;
    private final double widthMm;
    private final TextStyle style;
    private final PlotLegend legend;
    private final PlotArea area;
    private final double heightMm;

    /**
     * Lays out a plot.
     *
     * @param ranked the weightiest first; as many as are to be shown
     */
    public SensitivityPlot(List<Influence> ranked, ProfileWords words, double widthMm) {
        this.ranked = List.copyOf(ranked);
        this.words = words;
        this.widthMm = widthMm;
        this.style = TextStyle.ofPt(Math.max(6.5, Math.min(8, 6.5 + (widthMm - 80) / 80))).condensed();
        this.legend = new PlotLegend(style, widthMm - 2 * MARGIN_MM)
                .sign(words.phrases().get("sensitivity.changes"), (g, x, y) -> changes(g, x - 3, y, 6))
                .sign(words.phrases().get("sensitivity.decides"), (g, x, y) -> decides(g, x - 3, y, 6))
                .note(words.phrases().get("sensitivity.note"));
        double top = MARGIN_MM + TextMeasure.standard().leadingMm(style) + 2;
        double left = MARGIN_MM + widthMm * NAME_SHARE;
        Box box = new Box(left, top, widthMm - MARGIN_MM - 3 - left, Math.max(1, ranked.size()) * ROW_MM);
        int most = ranked.stream().mapToInt(i -> Math.max(i.changes(), i.decides())).max().orElse(1);
        this.area = new PlotArea(box, 0, Math.max(1, most) * 1.04, 0, 1);
        this.heightMm = box.bottomMm() + Axes.depthMm(style) + legend.heightMm() + 1 + MARGIN_MM;
    }

    /** The picture of a ranking, as high as it needs to be. */
    public static Picture picture(List<Influence> ranked, ProfileWords words, double widthMm) {
        return new SensitivityPlot(ranked, words, widthMm).picture();
    }

    /** The picture. */
    public Picture picture() {
        PictureBuilder g = new PictureBuilder();
        String title = words.phrases().get("sensitivity.title");
        g.lettering(style.bold()).text(MARGIN_MM, MARGIN_MM + TextMeasure.standard().ascentMm(style), title);
        new Axes(area, style).counts(g, words.phrases().get("sensitivity.axis"));
        g.pen(Ink.MUTED, 0.2).line(area.box().xMm(), area.box().yMm(), area.box().xMm(), area.box().bottomMm());
        if (ranked.isEmpty()) {
            g.lettering(style).text(area.box().xMm() + 1, area.box().centre().yMm(),
                    words.phrases().get("sensitivity.none"));
        }
        for (int i = 0; i < ranked.size(); i++) {
            Influence influence = ranked.get(i);
            double middle = area.box().yMm() + (i + 0.5) * ROW_MM;
            g.group(Frame.named("bar:" + i).withTooltip(tooltip(influence)), inner -> row(inner, influence, middle));
        }
        legend.draw(g, MARGIN_MM, heightMm - MARGIN_MM - legend.heightMm());
        return g.picture(widthMm, heightMm, title).described(Printable
                .line(ranked.stream().map(this::tooltip).collect(Collectors.joining("; "))));
    }

    private void row(PictureBuilder g, Influence influence, double middle) {
        Place place = influence.place();
        double room = area.box().xMm() - MARGIN_MM - 2;
        double leading = TextMeasure.standard().leadingMm(style);
        String device = place.device().name().isEmpty() ? place.device().id() : place.device().name();
        g.lettering(style).text(MARGIN_MM, middle - leading / 2 + TextMeasure.standard().capHeightMm(style) / 2,
                shortened(device, room));
        g.lettering(style.in(Ink.MUTED)).text(MARGIN_MM,
                middle + leading / 2 + TextMeasure.standard().capHeightMm(style) / 2, shortened(what(place), room));
        double left = area.box().xMm();
        changes(g, left, middle - BAR_MM / 2 - 0.2, area.x(influence.changes()) - left);
        decides(g, left, middle + BAR_MM / 2 + 0.2, area.x(influence.decides()) - left);
    }

    private String shortened(String text, double room) {
        return TextLayout.standard().shorten(Printable.line(text), style, room);
    }

    private String what(Place place) {
        String printed = place.printed().stream().map(Dimension::text).collect(Collectors.joining(" \u2013 "));
        String kind = words.phrases().get("sensitivity.of." + place.getClass().getSimpleName());
        String name = place.name().isEmpty() ? kind : kind + " " + place.name();
        if (place instanceof Place.Statement && printed.isEmpty()) {
            return name;
        }
        return printed.isEmpty() ? words.phrases().fill("sensitivity.unstated", name) : name + ": " + printed;
    }

    private String tooltip(Influence influence) {
        String settles = influence.settles().isPresent()
                ? words.phrases().fill("sensitivity.settles", Integer.toString(influence.settles().getAsInt())) : "";
        return words.phrases().fill("sensitivity.bar", influence.place().device().id(), what(influence.place()),
                Integer.toString(influence.changes()), Integer.toString(influence.decides()), settles);
    }

    private static void changes(PictureBuilder g, double x, double middle, double length) {
        if (length > 0) {
            g.noPen().fill(CurveLook.FIRST.ink()).rect(x, middle - BAR_MM / 2, length, BAR_MM);
        }
    }

    private static void decides(PictureBuilder g, double x, double middle, double length) {
        if (length > 0) {
            g.pen(CurveLook.SECOND.ink(), 0.2).fill(Fill.of(CurveLook.SECOND.hatch())).rect(x, middle - BAR_MM / 2,
                    length, BAR_MM);
        }
    }
}
