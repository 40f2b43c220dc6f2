/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.required;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.Printable;
import org.ferrule.fit.engineering.size.Flip;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.plot.Axes;
import org.ferrule.profile.plot.PlotArea;
import org.ferrule.profile.required.PartnerLane.Range;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * A required diameter as a plot: the diameter to the right, a lane for each partner with its verdicts along it, flips
 * marked and labelled, and lines at the printed and at the chosen diameter. Groups are named for hit-testing:
 * {@code lane:NUMBER}, {@code flip:NUMBER:NUMBER}, {@code printed}, {@code chosen}, {@code limit}.
 */
public final class RequiredPlot {
    private static final double MARGIN_MM = 2;
    private static final double LEAST_LANE_MM = 5;
    private static final double MOST_LANE_MM = 11;
    private static final double NAME_SHARE = 0.3;
    private static final double GAP_MM = 1.2;
    /** A lower plot has no room for the note. */
    private static final double NOTED_FROM_MM = 55;

    private final RequiredLanes lanes;
    private final Optional<Length> chosen;
    private final RequiredWords words;
    private final double widthMm;
    private final double heightMm;
    private final boolean noted;
    private final TextStyle style;
    private final double laneMm;
    private final PlotArea area;

    /**
     * Lays out a plot.
     *
     * @param chosen a diameter that is looked at; absent for none
     */
    public RequiredPlot(RequiredLanes lanes, Optional<Length> chosen, ProfileWords words, double widthMm,
            double heightMm) {
        this.lanes = lanes;
        this.chosen = chosen;
        this.words = new RequiredWords(lanes, words);
        this.widthMm = widthMm;
        this.noted = heightMm >= NOTED_FROM_MM;
        this.style = TextStyle.ofPt(Math.max(6.5, Math.min(8, 6.5 + (widthMm - 80) / 80))).condensed();
        double top = MARGIN_MM + 3 * leading() + 1;
        double below = Axes.depthMm(style) + notesMm() + MARGIN_MM;
        int count = Math.max(1, lanes.lanes().size());
        this.laneMm = Math.max(LEAST_LANE_MM, Math.min(MOST_LANE_MM, (heightMm - top - below) / count));
        this.heightMm = Math.max(heightMm, top + laneMm * count + below);
        double left = MARGIN_MM + widthMm * NAME_SHARE;
        Box box = new Box(left, top, widthMm - MARGIN_MM - left, laneMm * count);
        Length from = chosen.map(lanes.from()::min).orElse(lanes.from());
        Length to = chosen.map(lanes.to()::max).orElse(lanes.to());
        this.area = new PlotArea(box, from.mm(), to.mm(), 0, count);
    }

    /** The picture of required diameters. It is higher than asked where the lanes need it. */
    public static Picture picture(RequiredLanes lanes, Optional<Length> chosen, ProfileWords words, double widthMm,
            double heightMm) {
        return new RequiredPlot(lanes, chosen, words, widthMm, heightMm).picture();
    }

    private double leading() {
        return TextMeasure.standard().leadingMm(style);
    }

    private List<String> notes() {
        return !noted ? List.of()
                : TextLayout.standard().wrap(Printable.line(words.note()), style, widthMm - 2 * MARGIN_MM);
    }

    private double notesMm() {
        return notes().size() * leading() + 1;
    }

    /** Where diameters (in mm, to the right) lie on the paper. */
    public PlotArea area() {
        return area;
    }

    /** The picture. */
    public Picture picture() {
        PictureBuilder g = new PictureBuilder();
        g.lettering(style.bold()).text(MARGIN_MM, MARGIN_MM + TextMeasure.standard().ascentMm(style),
                TextLayout.standard().shorten(Printable.line(words.title()), style.bold(), widthMm - 2 * MARGIN_MM));
        LengthUnit unit = words.unit();
        new Axes(area, style).along(g, new Length(unit.thirdNanometres()).mm(), words.axis());
        List<PartnerLane> all = lanes.lanes();
        for (int i = 0; i < all.size(); i++) {
            PartnerLane lane = all.get(i);
            int number = i;
            g.group(Frame.named("lane:" + i).withTooltip(words.lane(lane)), inner -> lane(inner, lane, number));
        }
        markers(g);
        g.lettering(style.in(Ink.MUTED)).lines(MARGIN_MM,
                heightMm - MARGIN_MM - notesMm() + 1 + TextMeasure.standard().ascentMm(style), leading(), notes());
        return g.picture(widthMm, heightMm, Printable.line(words.title()))
                .described(Printable.line(String.join("; ", all.stream().map(words::lane).toList())));
    }

    private double topOf(int number) {
        return area.box().yMm() + number * laneMm;
    }

    private void lane(PictureBuilder g, PartnerLane lane, int number) {
        double top = topOf(number);
        double middle = top + laneMm / 2;
        g.lettering(style).text(MARGIN_MM, middle + TextMeasure.standard().capHeightMm(style) / 2, TextLayout.standard()
                .shorten(Printable.line(lane.name()), style, area.box().xMm() - MARGIN_MM - 2));
        for (Range range : lane.ranges()) {
            double from = x(range.from(), area.box().xMm());
            double to = x(range.to(), area.box().rightMm());
            if (to > from) {
                band(g, lane.look(range.verdict()), new Box(from, top + GAP_MM / 2, to - from, laneMm - GAP_MM));
            }
        }
        for (int i = 0; i < lane.sizes().flips().size(); i++) {
            Flip flip = lane.sizes().flips().get(i);
            String id = "flip:" + number + ":" + i;
            g.group(Frame.named(id).withTooltip(words.flip(flip)), inner -> flip(inner, flip, top));
        }
    }

    private double x(Optional<Length> diameter, double end) {
        return Math.max(area.box().xMm(), Math.min(area.box().rightMm(),
                diameter.map(d -> area.x(d.mm())).orElse(end)));
    }

    private void band(PictureBuilder g, VerdictLook look, Box box) {
        g.pen(Ink.RULE, 0.15).fill(look.tone(Scheme.LIGHT).fill()).rect(box);
        TextStyle lettering = style.in(look.tone(Scheme.LIGHT).ink());
        double glyph = Math.min(box.heightMm() * 0.7, 3);
        double width = glyph + 1 + TextMeasure.standard().widthMm(look.word(), lettering);
        double middle = box.centre().yMm();
        if (box.widthMm() > width + 2) {
            double left = box.centre().xMm() - width / 2;
            look.drawGlyph(g, new Point(left + glyph / 2, middle), glyph, Scheme.LIGHT);
            g.lettering(lettering).text(left + glyph + 1, middle + TextMeasure.standard().capHeightMm(lettering) / 2,
                    look.word());
        } else if (box.widthMm() > glyph + 0.6) {
            look.drawGlyph(g, new Point(box.centre().xMm(), middle), glyph, Scheme.LIGHT);
        }
    }

    private void flip(PictureBuilder g, Flip flip, double top) {
        double x = area.x(flip.last().distal().mm());
        g.pen(Ink.TEXT, 0.4).line(x, top, x, top + laneMm);
    }

    /** The values above the lanes: flips as far as there is room, then lines for what is printed, chosen, and a limit. */
    private void markers(PictureBuilder g) {
        double top = area.box().yMm();
        double bottom = area.box().bottomMm();
        List<double[]> taken = new ArrayList<>();
        lanes.limit(Verdict.FITS)
                .ifPresent(limit -> g.group(Frame.named("limit").withTooltip(words.limit(limit)), m -> {
                    m.pen(DrawingInks.LIMIT, 0.5).line(area.x(limit.mm()), top - 1, area.x(limit.mm()), bottom);
                    label(m, taken, limit, words.limit(limit), style.bold().in(DrawingInks.LIMIT),
                            top - 1.2 - leading());
                }));
        g.group(Frame.named("printed").withTooltip(words.printed()), m -> {
            m.pen(Stroke.of(Ink.TEXT, 0.3).dashed(Dash.DASHED)).line(area.x(lanes.printed().mm()), top - 1,
                    area.x(lanes.printed().mm()), bottom + 1);
            label(m, taken, lanes.printed(), words.printed(), style, top - 1.2 - leading());
        });
        chosen.ifPresent(diameter -> g.group(Frame.named("chosen").withTooltip(words.diameter(diameter)), m -> {
            double x = area.x(diameter.mm());
            m.pen(Ink.TEXT, 0.6).line(x, top - 1, x, bottom + 1).noPen().fill(Ink.TEXT)
                    .polygon(new Point(x, bottom + 0.2), new Point(x - 1.2, bottom + 2.2),
                            new Point(x + 1.2, bottom + 2.2));
        }));
        List<double[]> row = new ArrayList<>();
        lanes.flips().forEach(flip -> label(g, row, flip, words.value(flip), style.in(Ink.MUTED), top - 1.2));
    }

    /** Sets words at a diameter, inside the paper, where they run into no other words of that row. */
    private void label(PictureBuilder g, List<double[]> taken, Length diameter, String text, TextStyle lettering,
            double baseline) {
        double half = TextMeasure.standard().widthMm(text, lettering) / 2;
        double x = Math.max(MARGIN_MM + half, Math.min(widthMm - MARGIN_MM - half, area.x(diameter.mm())));
        boolean free = taken.stream().noneMatch(t -> x - half - 1 < t[1] && x + half + 1 > t[0]);
        if (free) {
            g.lettering(lettering).textMiddle(x, baseline, text);
            taken.add(new double[] { x - half, x + half });
        }
    }
}
