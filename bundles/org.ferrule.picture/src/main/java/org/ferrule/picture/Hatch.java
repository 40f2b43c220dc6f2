/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A pattern of lines or dots over an area, so that areas are told apart without colour. Hatches of one pattern and
 * spacing run on through neighbouring areas: they start at the origin of the coordinates in which they are drawn.
 *
 * @param pattern which lines
 * @param ink their colour
 * @param spacingMm the distance from line to line, measured across them, or from dot to dot; greater than 0
 * @param widthMm the width of a line or diameter of a dot; greater than 0 and less than the spacing
 */
public record Hatch(Pattern pattern, Ink ink, double spacingMm, double widthMm) {
    private static final double SHORTEST_MM = 0.001;

    /** What a hatch is made of. */
    public enum Pattern {
        /** Level lines. */
        HORIZONTAL(0, Marks.LINES),
        /** Upright lines. */
        VERTICAL(90, Marks.LINES),
        /** Level and upright lines. */
        GRID(0, Marks.CROSSED_LINES),
        /** Lines rising to the right at 45 degrees. */
        RISING(-45, Marks.LINES),
        /** Lines falling to the right at 45 degrees. */
        FALLING(45, Marks.LINES),
        /** Rising and falling lines. */
        LATTICE(45, Marks.CROSSED_LINES),
        /** Dots on a square grid. */
        DOTS(0, Marks.DOTS);

        private final double angleDegrees;
        private final Marks marks;

        Pattern(double angleDegrees, Marks marks) {
            this.angleDegrees = angleDegrees;
            this.marks = marks;
        }

        /** By how much the pattern is turned from level lines, an upright grid or upright rows of dots. */
        public double angleDegrees() {
            return angleDegrees;
        }
    }

    private enum Marks {
        LINES, CROSSED_LINES, DOTS
    }

    public Hatch {
        Check.positive("hatch spacing", spacingMm);
        Check.positive("hatch width", widthMm);
        if (widthMm >= spacingMm) {
            throw new IllegalArgumentException(
                    "A hatch of width " + widthMm + " mm at a spacing of " + spacingMm + " mm is solid");
        }
    }

    /** A hatch that reads well on paper: lines of 0.2 mm (dots of 0.4 mm) every 1.2 mm. */
    public static Hatch of(Pattern pattern, Ink ink) {
        return new Hatch(pattern, ink, 1.2, pattern == Pattern.DOTS ? 0.4 : 0.2);
    }

    /**
     * The lines or dots of one tile: a square of {@link #spacingMm()} from the origin. Tiles side by side, turned as a
     * whole about the origin by {@link Pattern#angleDegrees()}, make the hatch.
     */
    public List<Element> tile() {
        return marks(new Box(0, 0, spacingMm, spacingMm));
    }

    /** The lines or dots that cover a box; some reach beyond it, so the painter clips them to the area. */
    public Group over(Box box) {
        Frame frame = Frame.PLAIN.rotated(pattern.angleDegrees);
        Transform toMarks = frame.transform().inverse();
        Path outline = Path.polygon(box.corners(), Style.of(Fill.NONE));
        return new Group(frame, marks(outline.transformed(toMarks).bounds()));
    }

    /** The marks in all tiles that touch a box, in coordinates that are not turned. */
    private List<Element> marks(Box box) {
        List<Element> marks = new ArrayList<>();
        for (double y : middles(box.yMm(), box.bottomMm())) {
            if (pattern.marks == Marks.DOTS) {
                marks.add(dots(middles(box.xMm(), box.rightMm()), y));
            } else {
                marks.add(line(box.xMm(), y, box.rightMm(), y));
            }
        }
        if (pattern.marks == Marks.CROSSED_LINES) {
            middles(box.xMm(), box.rightMm()).forEach(x -> marks.add(line(x, box.yMm(), x, box.bottomMm())));
        }
        return marks;
    }

    /** The middles of the tiles that touch a stretch. */
    private List<Double> middles(double from, double to) {
        List<Double> middles = new ArrayList<>();
        long last = (long) Math.ceil(to / spacingMm);
        for (long i = (long) Math.floor(from / spacingMm); i < last; i++) {
            middles.add((i + 0.5) * spacingMm);
        }
        return middles;
    }

    private Element line(double x1, double y1, double x2, double y2) {
        return new Line(new Point(x1, y1), new Point(x2, y2), Stroke.of(ink, widthMm));
    }

    /** A row of dots is one line of the shortest dashes with round ends: a page of circles would be a heavy file. */
    private Element dots(List<Double> places, double y) {
        double first = places.get(0);
        double last = places.get(places.size() - 1) + SHORTEST_MM;
        Dash dash = Dash.of(SHORTEST_MM, spacingMm - SHORTEST_MM);
        return new Line(new Point(first, y), new Point(last, y), Stroke.of(ink, widthMm).dashed(dash).rounded());
    }
}
