/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.LengthChain.Link;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;
import org.ferrule.quantity.Length;

/** Lengths added up, one bar a line, each beginning where the one above ends; the margin last. */
final class ChainScene {
    private static final double NAMES_SHARE = 0.42;
    private static final double NUMBER_MM = 17;
    private static final double LARGEST_ROW_MM = 6.5;

    private final LengthChain chain;
    private final ReasonWords words;
    private final Zones zones;
    private final double left;
    private final double top;
    private final double row;
    private final double scale;
    private final double zero;

    ChainScene(LengthChain chain, ReasonWords words, Zones zones) {
        this.chain = chain;
        this.words = words;
        this.zones = zones;
        this.left = zones.left() + (zones.right() - zones.left()) * NAMES_SHARE;
        this.top = zones.titleBaseline() + 2;
        this.row = Math.min(LARGEST_ROW_MM, (zones.height() - 1.5 - top) / (chain.links().size() + 1));
        double least = 0;
        double most = 0;
        double sum = 0;
        for (Link link : chain.links()) {
            sum += link.length().mm();
            least = Math.min(least, sum);
            most = Math.max(most, sum);
        }
        this.scale = (zones.right() - NUMBER_MM - left) / Math.max(1, most - least);
        this.zero = left - least * scale;
    }

    /** Draws it, and tells what is drawn. */
    String draw(PictureBuilder g) {
        double at = 0;
        List<String> told = new ArrayList<>();
        for (int i = 0; i < chain.links().size(); i++) {
            Link link = chain.links().get(i);
            double from = at;
            int line = i;
            g.group(Frame.named("link:" + i), b -> bar(b, line, from, link.length().mm(), DrawingInks.SHAFT));
            String name = name(link);
            write(g, i, name, signed(link.length()), Ink.TEXT);
            told.add(name + " " + signed(link.length()));
            at += link.length().mm();
        }
        g.pen(Ink.MUTED, 0.15).line(zero, top, zero, top + row * (chain.links().size() + 1));
        g.group(Frame.named("margin"), b -> bar(b, chain.links().size(), 0, chain.margin().mm(),
                chain.margin().isNegative() ? DrawingInks.LIMIT : DrawingInks.WIRE));
        String margin = words.phrases().get(chain.margin().isNegative() ? "evidence.chain.short"
                : "evidence.chain.margin");
        write(g, chain.links().size(), margin, signed(chain.margin()),
                chain.margin().isNegative() ? DrawingInks.LIMIT : Ink.TEXT);
        told.add(margin + " " + signed(chain.margin()));
        return String.join("; ", told);
    }

    private void bar(PictureBuilder g, int line, double from, double length, Ink ink) {
        double x = zero + Math.min(from, from + length) * scale;
        g.fill(ink).pen(DrawingInks.SHAFT_LINE, 0.2).rect(x, top + line * row + 0.15 * row,
                Math.max(0.3, Math.abs(length) * scale), row * 0.7);
    }

    private void write(PictureBuilder g, int line, String name, String number, Ink ink) {
        double baseline = top + (line + 0.5) * row + TextMeasure.standard().capHeightMm(zones.lettering()) / 2;
        g.lettering(zones.lettering().in(ink)).text(zones.left(), baseline,
                TextLayout.standard().shorten(name, zones.lettering(), left - zones.left() - 1.5));
        g.textEnd(zones.right(), baseline, number);
    }

    private String name(Link link) {
        String part = words.phrases().get("evidence.part." + link.part());
        return link.device().isEmpty() ? part : part + ", " + link.device();
    }

    /** What is added is never written longer, what is taken off never shorter. */
    private String signed(Length length) {
        String sign = length.isNegative() ? "\u2212" : "+";
        return sign + (length.isNegative() ? words.lengths().shortfall(length.abs())
                : words.lengths().length(length));
    }
}
