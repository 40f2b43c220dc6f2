/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.compliance;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.balloon.ComplianceTable;
import org.ferrule.balloon.ComplianceTable.Row;
import org.ferrule.balloon.Inflation;
import org.ferrule.chart.look.DrawingInks;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.Text;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;

/**
 * The curve of a compliance table: a point for every row, named {@code row:NUMBER}, straight lines between them, the
 * nominal and the rated burst pressure. What lies beyond the rated burst pressure is hatched.
 */
final class CurvePicture {

    private static final TextStyle LETTERING = TextStyle.ofPt(8);
    private static final TextStyle SMALL = LETTERING.in(Ink.MUTED);
    private static final TextMeasure MEASURE = TextMeasure.standard();
    private static final double MARGIN_MM = 2;
    private static final double ROW_MM = MEASURE.leadingMm(LETTERING);
    private static final double POINT_MM = 0.9;

    private final ComplianceTable table;
    private final Optional<Pressure> nominal;
    private final int selected;
    private final LengthUnit unit;
    private final AxisTicks pressures;
    private final AxisTicks diameters;
    private final Box plot;

    /**
     * Prepares a picture.
     *
     * @param nominal the nominal pressure, if it is stated
     * @param selected the number of the row that is emphasized, or -1
     * @param unit of diameters
     */
    CurvePicture(ComplianceTable table, Optional<Pressure> nominal, int selected, LengthUnit unit, double widthMm,
            double heightMm) {
        this.table = table;
        this.nominal = nominal;
        this.selected = selected;
        this.unit = unit;
        double left = MARGIN_MM + 4 * MEASURE.widthMm("0", LETTERING) + ROW_MM + 1;
        double top = MARGIN_MM + 2 * ROW_MM;
        double bottom = heightMm - MARGIN_MM - 2 * ROW_MM - 1;
        plot = new Box(left, top, Math.max(5, widthMm - left - 5), Math.max(5, bottom - top));
        pressures = AxisTicks.around(0, allPressures().mapToDouble(CurvePicture::atm).max().orElse(1),
                Math.max(2, (int) (plot.widthMm() / 9)));
        double[] shown = table.rows().stream().mapToDouble(this::diameter).sorted().toArray();
        double room = 0.2 * Math.max(shown[shown.length - 1] - shown[0], 0.02 * shown[0]);
        diameters = AxisTicks.around(shown[0] - room, shown[shown.length - 1] + room,
                Math.max(2, (int) (plot.heightMm() / 6)));
    }

    private Stream<Pressure> allPressures() {
        return Stream.of(table.rows().stream().map(Row::pressure), table.ratedBurst().stream(), nominal.stream())
                .flatMap(each -> each);
    }

    private static double atm(Pressure pressure) {
        return pressure.in(PressureUnit.ATMOSPHERE);
    }

    private double diameter(Row row) {
        return row.diameter().label().in(unit);
    }

    private double x(double atm) {
        return plot.xMm() + pressures.share(atm) * plot.widthMm();
    }

    private double y(double diameter) {
        return plot.bottomMm() - diameters.share(diameter) * plot.heightMm();
    }

    Picture draw(double widthMm, double heightMm) {
        PictureBuilder g = new PictureBuilder();
        axes(g);
        limits(g);
        curve(g);
        return g.picture(widthMm, heightMm, "Compliance curve").described(description());
    }

    private String description() {
        List<String> lines = new ArrayList<>(table.rows().stream().map(Row::toString).toList());
        nominal.ifPresent(pressure -> lines.add("nominal " + pressure));
        table.ratedBurst().ifPresent(pressure -> lines.add("rated burst " + pressure));
        return String.join("\n", lines);
    }

    private void axes(PictureBuilder g) {
        for (BigDecimal value : pressures.values()) {
            double x = x(value.doubleValue());
            g.pen(Ink.RULE, 0.15).line(x, plot.yMm(), x, plot.bottomMm());
            g.lettering(SMALL).textMiddle(x, plot.bottomMm() + ROW_MM, AxisTicks.number(value));
        }
        for (BigDecimal value : diameters.values()) {
            double y = y(value.doubleValue());
            g.pen(Ink.RULE, 0.15).line(plot.xMm(), y, plot.rightMm(), y);
            g.lettering(SMALL).textEnd(plot.xMm() - 0.8, y + MEASURE.capHeightMm(SMALL) / 2, AxisTicks.number(value));
        }
        g.pen(Ink.MUTED, 0.25).noFill().rect(plot);
        g.textMiddle(plot.xMm() + plot.widthMm() / 2, plot.bottomMm() + 2 * ROW_MM, "pressure (atm)");
        g.text(MARGIN_MM + ROW_MM / 2, plot.yMm() + plot.heightMm() / 2, "diameter (" + unit.symbol() + ")",
                Text.Anchor.MIDDLE, -90);
    }

    private void limits(PictureBuilder g) {
        table.ratedBurst().ifPresent(rated -> {
            double x = x(atm(rated));
            if (x < plot.rightMm()) {
                g.noPen().fill(Fill.of(new Hatch(Hatch.Pattern.RISING, DrawingInks.TOLERANCE, 1.6, 0.15)))
                        .rect(x, plot.yMm(), plot.rightMm() - x, plot.heightMm());
            }
            limit(g, x, "rated burst " + rated, Stroke.of(DrawingInks.LIMIT, 0.4), 1);
        });
        nominal.ifPresent(pressure -> limit(g, x(atm(pressure)), "nominal " + pressure,
                Stroke.of(Ink.TEXT, 0.3).dashed(Dash.DASHED), 0));
    }

    /** A line with its name above, each kind on a row of its own, inside the plot's width. */
    private void limit(PictureBuilder g, double x, String name, Stroke stroke, int row) {
        g.pen(stroke).line(x, plot.yMm(), x, plot.bottomMm());
        double half = MEASURE.widthMm(name, LETTERING) / 2;
        double middle = Math.max(plot.xMm() + half, Math.min(plot.rightMm() + 3 - half, x));
        g.lettering(LETTERING.in(stroke.ink())).textMiddle(middle, MARGIN_MM + ROW_MM * (row + 0.6), name);
    }

    private void curve(PictureBuilder g) {
        Point[] points = table.rows().stream().map(row -> new Point(x(atm(row.pressure())), y(diameter(row))))
                .toArray(Point[]::new);
        if (points.length > 1) {
            g.noFill().pen(DrawingInks.SHAFT_LINE, 0.5).polyline(points);
        }
        nominal.map(table::diameterAt).filter(Inflation.Point.class::isInstance).map(Inflation.Point.class::cast)
                .ifPresent(at -> g.noFill().pen(Ink.TEXT, 0.3).circle(x(at.in(PressureUnit.ATMOSPHERE)),
                        y(at.diameter().in(unit)), 2 * POINT_MM));
        for (int i = 0; i < points.length; i++) {
            point(g, i, points[i]);
        }
    }

    private void point(PictureBuilder g, int index, Point at) {
        Row row = table.rows().get(index);
        boolean emphasized = index == selected;
        if (emphasized) {
            g.pen(Stroke.of(DrawingInks.SHAFT_LINE, 0.25).dashed(Dash.DOTTED)).line(at.xMm(), at.yMm(), at.xMm(),
                    plot.bottomMm()).line(plot.xMm(), at.yMm(), at.xMm(), at.yMm());
        }
        g.group(Frame.named("row:" + index).withTooltip(row.pressure() + ": " + row.diameter()), p -> {
            p.pen(DrawingInks.SHAFT_LINE, 0.4).fill(emphasized ? DrawingInks.SHAFT_LINE : Ink.PAPER)
                    .circle(at.xMm(), at.yMm(), emphasized ? 1.6 * POINT_MM : POINT_MM);
        });
        if (emphasized) {
            label(g, row, at);
        }
    }

    /** A curve that rises leaves room above to the left of a point, and below to the right. */
    private void label(PictureBuilder g, Row row, Point at) {
        String words = row.diameter() + " at " + row.pressure();
        double width = MEASURE.widthMm(words, LETTERING);
        boolean before = at.xMm() - 1.5 - width >= plot.xMm();
        double last = plot.rightMm() + 4 - width;
        double x = before ? at.xMm() - 1.5 - width : Math.max(plot.xMm() + 0.5, Math.min(last, at.xMm() + 2.5));
        double y = before ? Math.max(plot.yMm() + ROW_MM, at.yMm() - 1.2)
                : Math.min(plot.bottomMm() - 1, at.yMm() + ROW_MM);
        g.noPen().fill(Ink.PAPER).rect(x - 0.4, y - ROW_MM + 1, width + 0.8, ROW_MM);
        g.lettering(LETTERING.bold()).text(x, y, words);
    }
}
