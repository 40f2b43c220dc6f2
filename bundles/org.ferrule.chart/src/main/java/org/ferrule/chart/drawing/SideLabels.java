/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Box;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;

/** Sets labels in a column to the right of a drawing; leaders do not cross, since labels keep the order of places. */
final class SideLabels {
    private static final double GAP_MM = 1.2;
    private static final double BEND_MM = 1.6;

    private final Zones zones;
    private final double x;
    private final TextStyle style;
    private final TextLayout layout = TextLayout.standard();

    SideLabels(Zones zones, double x) {
        this.zones = zones;
        this.x = x;
        this.style = zones.lettering();
    }

    void draw(PictureBuilder g, List<SideLabel> labels, Box beside) {
        List<SideLabel> ordered = labels.stream().sorted(Comparator.comparingDouble(l -> l.place().yMm())).toList();
        List<List<String>> lines = fitted(ordered, beside);
        List<Double> heights = heights(lines, gap(lines, beside));
        List<Double> middles = Spread.middles(ordered.stream().map(l -> l.place().yMm()).toList(), heights,
                beside.yMm(), beside.bottomMm());
        for (int i = 0; i < ordered.size(); i++) {
            draw(g, ordered.get(i), lines.get(i), middles.get(i));
        }
    }

    private void draw(PictureBuilder g, SideLabel label, List<String> lines, double middle) {
        g.noFill().pen(label.ink(), 0.15).line(label.place().xMm(), label.place().yMm(), x - BEND_MM, middle)
                .line(x - BEND_MM, middle, x - 0.6, middle);
        g.lettering(style.in(label.ink())).lines(x, firstBaseline(middle, lines.size()), leading(), lines);
    }

    /** Words without a leader, beside the middle of a drawing. */
    void words(PictureBuilder g, String words, Box beside) {
        words(g, List.of(words), beside);
    }

    /** Sentences without leaders, each on lines of its own, beside the middle of a drawing. */
    void words(PictureBuilder g, List<String> sentences, Box beside) {
        List<String> lines = sentences.stream()
                .flatMap(s -> layout.wrap(Printable.line(s), style, zones.right() - x).stream()).toList();
        g.lettering(style.in(Ink.TEXT)).lines(x, firstBaseline(beside.centre().yMm(), lines.size()), leading(), lines);
    }

    private double firstBaseline(double middle, int lines) {
        return middle + layout.measure().capHeightMm(style) / 2 - (lines - 1) * leading() / 2;
    }

    /** Where there is no room for all lines of all labels, each has one. */
    private List<List<String>> fitted(List<SideLabel> labels, Box beside) {
        List<List<String>> whole = labels.stream().map(this::fitted).toList();
        double needed = heights(whole, GAP_MM).stream().mapToDouble(Double::doubleValue).sum();
        return needed <= beside.heightMm() ? whole
                : labels.stream().map(l -> List.of(layout.shorten(String.join(" ", l.lines()), style,
                        zones.right() - x))).toList();
    }

    /** Where there is too little room the labels close up, rather than reach beyond what they stand beside. */
    private double gap(List<List<String>> lines, Box beside) {
        double words = heights(lines, 0).stream().mapToDouble(Double::doubleValue).sum();
        return Math.max(0, Math.min(GAP_MM, (beside.heightMm() - words) / Math.max(1, lines.size())));
    }

    private List<Double> heights(List<List<String>> lines, double gap) {
        return lines.stream().map(l -> l.size() * leading() + gap).toList();
    }

    private List<String> fitted(SideLabel label) {
        List<String> fitted = new ArrayList<>();
        label.lines().forEach(line -> fitted.addAll(layout.wrap(line, style, zones.right() - x, 2)));
        return fitted;
    }

    private double leading() {
        return layout.measure().leadingMm(style);
    }
}
