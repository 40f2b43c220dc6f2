/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.look.CurveLook;
import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/** The signs of a plot and what they mean, in as many columns as there is room for, and a note below them. */
public final class PlotLegend {
    private static final double SAMPLE_MM = 9;
    private static final double GAP_MM = 4;
    private static final double WIDEST_MM = 128;

    private final TextStyle style;
    private final double widthMm;
    private final List<Entry> entries = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    /** Draws a sample of a line or a sign. */
    @FunctionalInterface
    public interface Sample {
        /** Draws it with its left end at a place. */
        void draw(PictureBuilder g, double xMm, double yMm);
    }

    private record Entry(String id, String text, Sample sample) {
    }

    /** A legend in that lettering. */
    public PlotLegend(TextStyle style, double widthMm) {
        this.style = style;
        this.widthMm = widthMm;
    }

    /** A curve by its look. */
    public PlotLegend curve(CurveLook look, String id, String text) {
        return add(id, text, (g, x, y) -> g.pen(look.stroke(0.5)).line(x, y, x + SAMPLE_MM - 2, y));
    }

    /** A line across the plot. */
    public PlotLegend line(String id, String text) {
        return add(id, text, (g, x, y) -> g.pen(Stroke.of(DrawingInks.WALL, 0.4).dashed(Dash.CENTRE_LINE)).line(x, y,
                x + SAMPLE_MM - 2, y));
    }

    /** A sign, drawn round a place. */
    public PlotLegend sign(String text, Sample sign) {
        return add("", text, (g, x, y) -> sign.draw(g, x + SAMPLE_MM / 2 - 1, y));
    }

    /** The sign of a stop, or of a contact in the worst case. */
    public PlotLegend contact(boolean stop, String text) {
        return add("", text, (g, x, y) -> ContactSigns.draw(g, stop, new Point(x + SAMPLE_MM / 2 - 1, y), 1));
    }

    /** A ring. */
    public PlotLegend ring(String text) {
        return add("", text,
                (g, x, y) -> g.noFill().pen(Ink.TEXT, 0.2).circle(x + SAMPLE_MM / 2 - 1, y, 0.8));
    }

    /** Words below all signs. */
    public PlotLegend note(String text) {
        notes.addAll(TextLayout.standard().wrap(Printable.line(text), style.in(Ink.MUTED), widthMm));
        return this;
    }

    private PlotLegend add(String id, String text, Sample sample) {
        entries.add(new Entry(id, Printable.line(text), sample));
        return this;
    }

    private double leading() {
        return TextMeasure.standard().leadingMm(style) + 0.5;
    }

    private double columnMm() {
        double widest = entries.stream()
                .mapToDouble(entry -> TextMeasure.standard().widthMm(entry.text, style)).max().orElse(0);
        return Math.min(widthMm, Math.min(WIDEST_MM, widest + SAMPLE_MM + GAP_MM));
    }

    private int columns() {
        return Math.max(1, (int) (widthMm / columnMm()));
    }

    private int rows() {
        return (entries.size() + columns() - 1) / columns();
    }

    /** The room that it takes. */
    public double heightMm() {
        return rows() * leading() + notes.size() * TextMeasure.standard().leadingMm(style);
    }

    /** Draws it with its upper left corner at a place. */
    public void draw(PictureBuilder g, double xMm, double yMm) {
        double columnMm = widthMm / columns();
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            double x = xMm + i / rows() * columnMm;
            double y = yMm + (i % rows() + 0.5) * leading();
            g.group(entry.id.isEmpty() ? Frame.PLAIN : Frame.named(entry.id),
                    inner -> draw(inner, entry, x, y, columnMm));
        }
        g.lettering(style.in(Ink.MUTED)).lines(xMm,
                yMm + rows() * leading() + TextMeasure.standard().ascentMm(style),
                TextMeasure.standard().leadingMm(style), notes);
    }

    private void draw(PictureBuilder g, Entry entry, double x, double y, double columnMm) {
        entry.sample.draw(g, x, y);
        g.lettering(style).text(x + SAMPLE_MM, y + TextMeasure.standard().capHeightMm(style) / 2,
                TextLayout.standard().shorten(entry.text, style, columnMm - SAMPLE_MM - 1));
    }
}
