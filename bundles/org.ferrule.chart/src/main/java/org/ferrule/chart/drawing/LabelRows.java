/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;

/**
 * Sets labels in one or two rows beside a drawing, with leaders to their places, so that no two overlap and no leader
 * runs through words: every other label goes to the far row, and its leader keeps a slot free in the near one.
 */
final class LabelRows {
    private static final double GAP_MM = 1.6;
    private static final double SLOT_MM = 0.9;

    private final TextLayout layout = TextLayout.standard();
    private final TextStyle style;
    private final double from;
    private final double to;
    private final int mostRows;

    /** A label where it is set; {@code leaderX} is where its leader leaves the rows. */
    private record Set(Label label, String words, double middle, double leaderX, boolean far) {
    }

    LabelRows(TextStyle style, double from, double to, int mostRows) {
        this.style = style;
        this.from = from;
        this.to = to;
        this.mostRows = mostRows;
    }

    /** The height of so many rows. */
    double heightMm() {
        return mostRows * leading();
    }

    private double leading() {
        return layout.measure().leadingMm(style);
    }

    /**
     * Draws labels above or below their places.
     *
     * @param edgeY where the rows begin: their lower edge when {@code above}, else their upper edge
     */
    void draw(PictureBuilder g, List<Label> labels, double edgeY, boolean above) {
        List<Label> ordered = labels.stream().filter(l -> !l.full().isEmpty())
                .sorted(Comparator.comparingDouble(Label::xMm)).toList();
        List<Set> sets = set(ordered);
        boolean twoRows = sets.stream().anyMatch(Set::far);
        for (Set set : sets) {
            draw(g, set, edgeY, above, twoRows);
        }
    }

    private void draw(PictureBuilder g, Set set, double edgeY, boolean above, boolean twoRows) {
        double ascent = layout.measure().capHeightMm(style);
        int sign = above ? -1 : 1;
        double rowEdge = edgeY + (set.far ? sign * leading() : 0);
        double baseline = above ? rowEdge - layout.measure().descentMm(style) : rowEdge + ascent + 0.4;
        Ink ink = set.label.ink();
        g.lettering(style.in(ink)).textMiddle(set.middle, baseline, set.words);
        g.noFill().pen(ink, 0.15);
        double start = above ? baseline + 0.5 : baseline - ascent - 0.5;
        if (twoRows && set.far) {
            g.line(set.leaderX, start, set.leaderX, edgeY);
            start = edgeY;
        }
        g.line(set.leaderX, start, set.label.xMm(), set.label.yMm());
    }

    private List<Set> set(List<Label> labels) {
        List<String> full = labels.stream().map(Label::full).toList();
        List<String> brief = labels.stream().map(Label::brief).toList();
        return inOneRow(labels, full).or(() -> inTwoRows(labels, full)).or(() -> inOneRow(labels, brief))
                .or(() -> inTwoRows(labels, brief)).orElseGet(() -> shortened(labels, brief));
    }

    private List<Set> shortened(List<Label> labels, List<String> words) {
        for (double width = 30; width > 2; width *= 0.9) {
            double most = width;
            List<String> cut = words.stream().map(w -> layout.shorten(w, style, most)).toList();
            Optional<List<Set>> sets = inTwoRows(labels, cut).or(() -> inOneRow(labels, cut));
            if (sets.isPresent()) {
                return sets.get();
            }
        }
        return List.of();
    }

    private Optional<List<Set>> inOneRow(List<Label> labels, List<String> words) {
        List<Double> widths = words.stream().map(this::width).toList();
        if (sum(widths) > to - from) {
            return Optional.empty();
        }
        List<Double> middles = Spread.middles(labels.stream().map(Label::xMm).toList(), widths, from, to);
        List<Set> sets = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            double reach = Math.max(0, widths.get(i) / 2 - GAP_MM / 2 - 0.5);
            sets.add(new Set(labels.get(i), words.get(i), middles.get(i),
                    clamp(labels.get(i).xMm(), middles.get(i) - reach, middles.get(i) + reach), false));
        }
        return Optional.of(sets);
    }

    private Optional<List<Set>> inTwoRows(List<Label> labels, List<String> words) {
        if (mostRows < 2) {
            return Optional.empty();
        }
        List<Double> nearWidths = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            nearWidths.add(isFar(i) ? SLOT_MM : width(words.get(i)));
        }
        List<Double> places = labels.stream().map(Label::xMm).toList();
        List<Double> near = Spread.middles(places, nearWidths, from, to);
        List<Double> far = farMiddles(words, near);
        return sum(nearWidths) > to - from || !farReach(words, near, far) ? Optional.empty()
                : Optional.of(sets(labels, words, nearWidths, near, far));
    }

    private List<Set> sets(List<Label> labels, List<String> words, List<Double> nearWidths, List<Double> near,
            List<Double> far) {
        List<Set> sets = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            double reach = Math.max(0, nearWidths.get(i) / 2 - GAP_MM / 2 - 0.5);
            sets.add(isFar(i) ? new Set(labels.get(i), words.get(i), far.get(i / 2), near.get(i), true)
                    : new Set(labels.get(i), words.get(i), near.get(i),
                            clamp(labels.get(i).xMm(), near.get(i) - reach, near.get(i) + reach), false));
        }
        return sets;
    }

    private List<Double> farMiddles(List<String> words, List<Double> slots) {
        List<Double> wanted = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        for (int i = 1; i < words.size(); i += 2) {
            wanted.add(slots.get(i));
            widths.add(width(words.get(i)));
        }
        return Spread.middles(wanted, widths, from, to);
    }

    /** Whether each label of the far row stands over its slot, and within the drawing. */
    private boolean farReach(List<String> words, List<Double> slots, List<Double> far) {
        for (int i = 1; i < words.size(); i += 2) {
            double half = (width(words.get(i)) - GAP_MM) / 2;
            double middle = far.get(i / 2);
            if (Math.abs(middle - slots.get(i)) > half || middle + half > to + 0.01) {
                return false;
            }
        }
        return true;
    }

    private static boolean isFar(int index) {
        return index % 2 == 1;
    }

    private double width(String words) {
        return layout.measure().widthMm(words, style) + GAP_MM;
    }

    private static double sum(List<Double> widths) {
        return widths.stream().mapToDouble(Double::doubleValue).sum();
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
