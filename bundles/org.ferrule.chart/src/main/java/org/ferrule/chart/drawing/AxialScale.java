/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * Lays a long thin thing out along a drawing. The stretches between stations of interest are drawn to one scale; long
 * ones are broken in the middle when the short ones would become too small to be seen.
 */
final class AxialScale {
    private static final double GAP_MM = 2.2;
    /** A stretch of interest gets at least this width where there is room. */
    private static final double LEGIBLE_MM = 7;
    private static final double LARGEST_SHARE = 0.28;

    private final List<Interval> intervals;
    private final double mmPerMm;

    /** A stretch between two neighbouring stations and where it is drawn. */
    private record Interval(double from, double to, double x0, double x1, boolean broken, double scale) {

        double x(double station) {
            if (!broken) {
                return x0 + (station - from) * scale;
            }
            if (station <= gapFrom()) {
                return x0 + (station - from) * scale;
            }
            if (station >= gapTo()) {
                return x1 - (to - station) * scale;
            }
            return gapX() + GAP_MM * (station - gapFrom()) / (gapTo() - gapFrom());
        }

        double station(double x) {
            if (!broken || x <= gapX()) {
                return from + (x - x0) / scale;
            }
            return x >= gapX() + GAP_MM ? to - (x1 - x) / scale
                    : gapFrom() + (gapTo() - gapFrom()) * (x - gapX()) / GAP_MM;
        }

        private double shownPart() {
            return (x1 - x0 - GAP_MM) / 2 / scale;
        }

        double gapFrom() {
            return from + shownPart();
        }

        double gapTo() {
            return to - shownPart();
        }

        double gapX() {
            return (x0 + x1 - GAP_MM) / 2;
        }
    }

    private AxialScale(List<Interval> intervals, double mmPerMm) {
        this.intervals = intervals;
        this.mmPerMm = mmPerMm;
    }

    /**
     * Lays stations out between two places on the paper.
     *
     * @param stations of interest in mm; at least two that differ
     * @throws IllegalArgumentException when there are fewer
     */
    static AxialScale of(Collection<Double> stations, double x0, double x1) {
        List<Double> ordered = stations.stream().map(s -> s + 0.0).distinct().sorted().toList(); // no -0.0 beside 0.0
        if (ordered.size() < 2) {
            throw new IllegalArgumentException("nothing to lay out between the stations " + stations);
        }
        double width = x1 - x0;
        double scale = scale(ordered, width);
        double cap = cap(ordered, width, scale);
        List<Interval> intervals = new ArrayList<>();
        double x = x0;
        for (int i = 1; i < ordered.size(); i++) {
            double length = ordered.get(i) - ordered.get(i - 1);
            boolean broken = length * scale > cap + 0.01;
            double drawn = broken ? cap : length * scale;
            intervals.add(new Interval(ordered.get(i - 1), ordered.get(i), x, x + drawn, broken, scale));
            x += drawn;
        }
        return new AxialScale(List.copyOf(intervals), scale);
    }

    /** As large as makes the shortest stretch legible, but no larger than leaves the long ones their share. */
    private static double scale(List<Double> stations, double width) {
        double whole = stations.get(stations.size() - 1) - stations.get(0);
        double shortest = whole;
        for (int i = 1; i < stations.size(); i++) {
            shortest = Math.min(shortest, stations.get(i) - stations.get(i - 1));
        }
        double uniform = width / whole;
        double legible = LEGIBLE_MM / shortest;
        double share = Math.max(width * LARGEST_SHARE, 1.02 * width / (stations.size() - 1));
        return Math.max(uniform, Math.min(legible, largestScale(stations, width, share)));
    }

    /** The scale at which stretches of at most a share fill the width. */
    private static double largestScale(List<Double> stations, double width, double share) {
        double low = 0;
        double high = 1e6;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (drawn(stations, middle, share) < width) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** The width at which stretches are broken so that all of them fill the width. */
    private static double cap(List<Double> stations, double width, double scale) {
        double low = 0;
        double high = width;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (drawn(stations, scale, middle) < width) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double drawn(List<Double> stations, double scale, double cap) {
        double sum = 0;
        for (int i = 1; i < stations.size(); i++) {
            sum += Math.min(cap, scale * (stations.get(i) - stations.get(i - 1)));
        }
        return sum;
    }

    /** Where a station is drawn; stations outside are drawn at the ends. */
    double x(double station) {
        for (Interval interval : intervals) {
            if (station <= interval.to) {
                return interval.x(Math.max(station, interval.from));
            }
        }
        return intervals.get(intervals.size() - 1).x1;
    }

    /** Where a station is drawn; stations outside where they would be if the device went on to scale. */
    double beyond(double station) {
        double inside = Math.max(from(), Math.min(to(), station));
        return x(inside) + (station - inside) * mmPerMm;
    }

    /** The station that is drawn at a place; places outside count as if the device went on to scale. */
    double station(double x) {
        Interval first = intervals.get(0);
        Interval last = intervals.get(intervals.size() - 1);
        if (x <= first.x0) {
            return first.from - (first.x0 - x) / mmPerMm;
        }
        return intervals.stream().filter(interval -> x <= interval.x1).findFirst().map(i -> i.station(x))
                .orElse(last.to + (x - last.x1) / mmPerMm);
    }

    /** How many millimetres of paper stand for one millimetre. */
    double mmPerMm() {
        return mmPerMm;
    }

    double from() {
        return intervals.get(0).from;
    }

    double to() {
        return intervals.get(intervals.size() - 1).to;
    }

    /** Where the breaks begin on the paper; each is {@link #gapMm()} wide. */
    List<Double> gaps() {
        return intervals.stream().filter(Interval::broken).map(Interval::gapX).toList();
    }

    double gapMm() {
        return GAP_MM;
    }

    /** The stations from one to another at which a straight line may change its slope on the paper, both included. */
    List<Double> bends(double from, double to) {
        TreeSet<Double> bends = new TreeSet<>(List.of(from, to));
        for (Interval interval : intervals) {
            addBetween(bends, interval.from, from, to);
            if (interval.broken) {
                addBetween(bends, interval.gapFrom(), from, to);
                addBetween(bends, interval.gapTo(), from, to);
            }
        }
        return List.copyOf(bends);
    }

    private static void addBetween(TreeSet<Double> bends, double station, double from, double to) {
        if (station > from && station < to) {
            bends.add(station);
        }
    }

    /** Whether a station is drawn to scale, and not left out by a break. */
    boolean shows(double station) {
        return station >= from() && station <= to() && intervals.stream()
                .noneMatch(i -> i.broken && station > i.gapFrom() && station < i.gapTo());
    }
}
