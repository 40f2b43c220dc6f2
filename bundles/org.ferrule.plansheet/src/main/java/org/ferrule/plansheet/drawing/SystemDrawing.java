/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.drawing;

import java.util.List;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.plansheet.words.PlanWords;

/**
 * The system as devices that lie in each other, hubs left and tips right, each with its name beside its tip. What is new
 * has solid walls or a bold outline, and the word; what is out a broken outline and the word. Not to scale, and it says so.
 */
public final class SystemDrawing {
    private static final double MOST_BODIES = 0.4;
    private static final double LEAST_BODIES = 0.25;
    private static final double GAP_MM = 2;
    private static final double ROW = 1.2;
    private static final double THIN_MM = 0.15;

    private final List<Part> parts;
    private final Rows rows;
    private final Phrases phrases;
    private final Scheme scheme;
    private final PageStyle style;
    private final double widthMm;
    private final double rowMm;

    private SystemDrawing(List<Part> parts, Phrases phrases, Scheme scheme, double widthMm, double scale) {
        this.parts = parts;
        this.rows = new Rows(parts);
        this.phrases = phrases;
        this.scheme = scheme;
        this.style = new PageStyle(scale);
        this.widthMm = widthMm;
        this.rowMm = PageStyle.leading(style.strong()) * ROW;
    }

    /**
     * A system as it is.
     *
     * @param widthMm of the picture; its height follows
     * @param scale how much larger lettering is than on A4
     */
    public static Picture of(SystemState state, PlanWords words, Scheme scheme, double widthMm, double scale) {
        return change(state, state, words, scheme, widthMm, scale);
    }

    /** A system as a step leaves it, with what the step brought in and took out. */
    public static Picture change(SystemState before, SystemState after, PlanWords words, Scheme scheme,
            double widthMm, double scale) {
        return new SystemDrawing(Parts.of(before, after, words.names()), words.phrases(), scheme, widthMm, scale)
                .picture();
    }

    private Picture picture() {
        PictureBuilder g = new PictureBuilder();
        double axis = rowMm * (rows.above() + 0.6);
        double bottom = axis + rowMm * (rows.below() + 0.5);
        PartPainter painter = new PartPainter(g, scheme, rows, new Box(0.5, 0, bodiesMm(), bottom), rowMm, axis);
        parts.forEach(painter::draw);
        if (parts.stream().anyMatch(part -> part.place() == Part.Place.MAIN_WIRE)) {
            painter.lesion();
        }
        parts.forEach(part -> g.group(Frame.named("label:" + part.place()), inner -> label(inner, painter, part)));
        TextStyle caption = style.small().in(ink(Ink.MUTED));
        List<String> lines = TextLayout.standard().wrap(phrases.get("drawing.caption"), caption, widthMm);
        g.lettering(caption).lines(0, PageStyle.baseline(bottom, caption), PageStyle.leading(caption), lines);
        return g.picture(widthMm, bottom + lines.size() * PageStyle.leading(caption), phrases.get("drawing.title"))
                .described(String.join("\n", parts.stream().map(this::inWords).toList()));
    }

    /** As wide as the longest label leaves room for, within limits. */
    private double bodiesMm() {
        double longest = parts.stream().mapToDouble(part -> tagMm(part)
                + PageStyle.width(part.place().word(phrases), style.small())
                + PageStyle.width(named(part), style.strong())).max().orElse(0) + 2 * GAP_MM;
        return Math.max(widthMm * LEAST_BODIES, Math.min(widthMm * MOST_BODIES, widthMm - longest));
    }

    private double tagMm(Part part) {
        return part.state() == Part.State.THERE ? 0
                : PageStyle.width(phrases.get("drawing." + part.state()), style.small().bold()) + 2 * style.padding()
                        + GAP_MM / 2;
    }

    private void label(PictureBuilder g, PartPainter painter, Part part) {
        double y = painter.y(rows.label(part.place()));
        double left = painter.x(1) + GAP_MM;
        leader(g, painter, part, y, left);
        double x = left + tag(g, part, left, y);
        TextStyle slot = style.small().in(ink(Ink.MUTED));
        TextStyle name = style.strong().in(ink(part.state() == Part.State.OUT ? Ink.MUTED : Ink.TEXT));
        String word = part.place().word(phrases);
        double base = y + TextMeasure.standard().capHeightMm(name) / 2;
        double nameAt = x + PageStyle.width(word, slot) + GAP_MM / 2;
        g.lettering(slot).text(x, base, word);
        g.lettering(name).text(nameAt, base, TextLayout.standard().shorten(named(part), name, widthMm - nameAt));
    }

    private void leader(PictureBuilder g, PartPainter painter, Part part, double y, double left) {
        g.pen(Stroke.of(ink(Ink.RULE), THIN_MM).dashed(Dash.of(0.3, 0.5)));
        double body = painter.y(rows.upper(part.place()));
        double from = painter.x(part.place().tip());
        if (part.place().body() == Part.Body.BOX) {
            from = painter.x((part.place().hub() + part.place().tip()) / 2);
            g.line(from, y, from, painter.y(rows.upper(Part.Place.GUIDE)) - rowMm * 0.25);
        } else if (body != y) {
            from = painter.x((part.place().hub() + part.place().tip()) / 2);
            g.line(from, body + rowMm * 0.4, from, y);
        }
        g.line(from, y, left - GAP_MM / 3, y);
    }

    /** The word in a box, for what is new or out; returns the room that it takes. */
    private double tag(PictureBuilder g, Part part, double x, double y) {
        if (part.state() == Part.State.THERE) {
            return 0;
        }
        boolean isNew = part.state() == Part.State.NEW;
        String word = phrases.get("drawing." + part.state());
        TextStyle lettering = style.small().bold().in(ink(isNew ? Ink.PAPER : Ink.TEXT));
        double width = tagMm(part) - GAP_MM / 2;
        double height = rowMm * 0.86;
        Box box = new Box(x, y - height / 2, width, height);
        if (isNew) {
            g.noPen().fill(ink(Ink.TEXT)).roundRect(box, 0.6);
        } else {
            g.noFill().pen(Stroke.of(ink(Ink.TEXT), THIN_MM).dashed(Dash.of(0.8, 0.5))).roundRect(box, 0.6);
        }
        g.lettering(lettering).text(x + style.padding(), y + TextMeasure.standard().capHeightMm(lettering) / 2, word);
        return tagMm(part);
    }

    private String named(Part part) {
        return part.was().isEmpty() ? part.name() : phrases.fill("drawing.instead", part.name(), part.was());
    }

    private String inWords(Part part) {
        String said = phrases.fill("drawing.part", part.place().word(phrases), named(part));
        return part.state() == Part.State.THERE ? said
                : phrases.fill("drawing.part.marked", said, phrases.get("drawing." + part.state()));
    }

    private Ink ink(Ink ink) {
        return DrawingInks.in(scheme, ink);
    }
}
