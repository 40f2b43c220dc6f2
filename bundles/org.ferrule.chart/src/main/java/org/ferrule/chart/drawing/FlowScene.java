/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;

/** The share of flow that is left: a bar from nothing to the empty lumen, and the interval on it. */
final class FlowScene {
    private static final double BAR_MM = 6;
    private static final double LINE_MM = 0.25;
    private static final int[] TICKS = { 0, 25, 50, 75, 100 };
    private static final int[] FEW_TICKS = { 0, 50, 100 };
    private static final double NARROW_MM = 40;

    private final FlowLeft flow;
    private final ReasonWords words;
    private final Zones zones;
    private final Box bar;

    FlowScene(FlowLeft flow, ReasonWords words, Zones zones) {
        this.flow = flow;
        this.words = words;
        this.zones = zones;
        double leading = Zones.leading(zones.lettering());
        double top = zones.titleBaseline() + leading + 2.5;
        this.bar = new Box(zones.left() + 4, top, zones.right() - zones.left() - 8, BAR_MM);
    }

    /** Draws it, and tells what is drawn. */
    String draw(PictureBuilder g) {
        g.fill(DrawingInks.WALL).noPen().rect(bar);
        g.group(Frame.named("open"), o -> open(o));
        g.noFill().pen(DrawingInks.SHAFT_LINE, LINE_MM).rect(bar);
        for (int tick : bar.widthMm() < NARROW_MM ? FEW_TICKS : TICKS) {
            tick(g, tick);
        }
        interval(g);
        String text = text();
        List<String> lines = TextLayout.standard().wrap(text, zones.lettering(), zones.right() - zones.left());
        double y = bar.bottomMm() + 2 * Zones.leading(zones.smallStyle()) + 1.5
                + TextMeasure.standard().ascentMm(zones.lettering());
        int most = Math.max(1, (int) ((zones.height() - 1 - y) / Zones.leading(zones.lettering())) + 1);
        g.lettering(zones.lettering()).lines(zones.left(), y, Zones.leading(zones.lettering()),
                lines.subList(0, Math.min(most, lines.size())));
        return percent(flow.low()) + " \u2013 " + percent(flow.high()) + "; " + text;
    }

    private void open(PictureBuilder g) {
        g.noPen().fill(DrawingInks.WIRE).rect(bar.xMm(), bar.yMm(), flow.high() * bar.widthMm(), bar.heightMm());
        g.fill(DrawingInks.LUMEN).rect(bar.xMm(), bar.yMm(), flow.low() * bar.widthMm(), bar.heightMm());
        double low = bar.xMm() + flow.low() * bar.widthMm();
        double high = bar.xMm() + flow.high() * bar.widthMm();
        g.pen(DrawingInks.LIMIT, 0.5).line(low, bar.yMm() - 1, low, bar.bottomMm() + 1).line(high, bar.yMm() - 1,
                high, bar.bottomMm() + 1);
    }

    private void tick(PictureBuilder g, int tick) {
        double x = bar.xMm() + bar.widthMm() * tick / 100;
        g.pen(Ink.MUTED, 0.15).line(x, bar.bottomMm() + 1, x, bar.bottomMm() + 1.8);
        g.lettering(zones.smallStyle()).textMiddle(x,
                bar.bottomMm() + 2.2 + TextMeasure.standard().capHeightMm(zones.smallStyle()), tick + " %");
    }

    private void interval(PictureBuilder g) {
        String text = percent(flow.low()) + " \u2013 " + percent(flow.high());
        double half = TextMeasure.standard().widthMm(text, zones.titleStyle()) / 2;
        double x = bar.xMm() + (flow.low() + flow.high()) / 2 * bar.widthMm();
        x = Math.max(zones.left() + half, Math.min(zones.right() - half, x));
        g.lettering(zones.titleStyle().in(DrawingInks.LIMIT)).textMiddle(x, bar.yMm() - 1.6, text);
    }

    private String text() {
        List<String> devices = new ArrayList<>();
        flow.devices().forEach(d -> devices.add(words.lengths().device(d)));
        String what = words.phrases().fill("evidence.flow.what", String.join(" + ", devices),
                words.lengths().lumen(flow.lumen()), words.bore(flow.lumenSection()));
        return what + ". " + words.phrases().get(flow.exact() ? "evidence.flow.exact" : "evidence.flow.searched");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, share < 0.1 ? "%.1f %%" : "%.0f %%", share * 100);
    }
}
