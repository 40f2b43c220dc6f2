/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.picture.PictureBuilder;

/** Sets things one after the other, and on a new line where one does not fit any more. */
final class Flow {
    private final double widthMm;
    private final double lineMm;
    private final List<Item> items = new ArrayList<>();

    /** Draws something with its upper left corner at a place. */
    @FunctionalInterface
    interface Drawing {
        void draw(PictureBuilder g, double xMm, double yMm);
    }

    private record Item(double width, Drawing drawing) {
    }

    /** An item where it is set. */
    private record Set(Item item, double x, int line) {
    }

    Flow(double widthMm, double lineMm) {
        this.widthMm = widthMm;
        this.lineMm = lineMm;
    }

    Flow add(double itemWidthMm, Drawing drawing) {
        items.add(new Item(itemWidthMm, drawing));
        return this;
    }

    private List<Set> set() {
        List<Set> set = new ArrayList<>();
        double x = 0;
        int line = 0;
        for (Item item : items) {
            if (x > 0 && x + item.width > widthMm) {
                x = 0;
                line++;
            }
            set.add(new Set(item, x, line));
            x += item.width;
        }
        return set;
    }

    /** The width of everything on one line. */
    double wholeMm() {
        return items.stream().mapToDouble(Item::width).sum();
    }

    int lines() {
        List<Set> set = set();
        return set.isEmpty() ? 0 : set.get(set.size() - 1).line + 1;
    }

    double heightMm() {
        return lines() * lineMm;
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        set().forEach(s -> s.item.drawing.draw(g, xMm + s.x, yMm + s.line * lineMm));
    }
}
