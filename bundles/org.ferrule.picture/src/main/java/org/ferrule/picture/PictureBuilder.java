/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Makes pictures step by step. Pen, fill and lettering stay in force until they are changed; a group starts with
 * those in force and leaves them as they were:
 *
 * <pre>{@code
 * Picture picture = new PictureBuilder()
 *     .pen(Ink.TEXT, 0.3).fill(Ink.BAND).rect(10, 10, 60, 12)
 *     .lettering(TextStyle.ofPt(9).bold()).text(12, 18, "Guide catheter")
 *     .group(Frame.at(10, 30).withId("row:1"), g -> g.noFill().circle(5, 5, 4))
 *     .picture(210, 297, "Example");
 * }</pre>
 *
 * It starts with a black pen of 0.25 mm, no fill, and lettering of 9 pt.
 */
public final class PictureBuilder {

    private final List<Element> elements = new ArrayList<>();
    private Optional<Stroke> pen = Optional.of(Stroke.of(Ink.TEXT, 0.25));
    private Fill fill = Fill.NONE;
    private TextStyle lettering = TextStyle.ofPt(9);

    /** Outlines and lines from here on. */
    public PictureBuilder pen(Stroke stroke) {
        pen = Optional.of(stroke);
        return this;
    }

    /** Solid outlines and lines from here on. */
    public PictureBuilder pen(Ink ink, double widthMm) {
        return pen(Stroke.of(ink, widthMm));
    }

    /** No outlines from here on. */
    public PictureBuilder noPen() {
        pen = Optional.empty();
        return this;
    }

    /** Areas from here on. */
    public PictureBuilder fill(Fill cover) {
        fill = cover;
        return this;
    }

    /** Areas of an even colour from here on. */
    public PictureBuilder fill(Ink ink) {
        return fill(Fill.of(ink));
    }

    /** Areas left open from here on. */
    public PictureBuilder noFill() {
        return fill(Fill.NONE);
    }

    /** Text from here on. */
    public PictureBuilder lettering(TextStyle style) {
        lettering = style;
        return this;
    }

    /** A line; needs a pen. */
    public PictureBuilder line(double x1Mm, double y1Mm, double x2Mm, double y2Mm) {
        Stroke stroke = pen.orElseThrow(() -> new IllegalStateException("A line needs a pen"));
        return add(new Line(new Point(x1Mm, y1Mm), new Point(x2Mm, y2Mm), stroke));
    }

    /** Straight lines from point to point. */
    public PictureBuilder polyline(Point... points) {
        return add(Path.polyline(List.of(points), style()));
    }

    /** A closed outline of straight lines. */
    public PictureBuilder polygon(Point... points) {
        return add(Path.polygon(List.of(points), style()));
    }

    /** A free outline. */
    public PictureBuilder path(Outline outline) {
        return add(outline.path(style()));
    }

    /** An upright rectangle. */
    public PictureBuilder rect(double xMm, double yMm, double widthMm, double heightMm) {
        return rect(new Box(xMm, yMm, widthMm, heightMm));
    }

    /** An upright rectangle. */
    public PictureBuilder rect(Box box) {
        return roundRect(box, 0);
    }

    /** An upright rectangle with rounded corners. */
    public PictureBuilder roundRect(Box box, double cornerRadiusMm) {
        return add(new Rect(box, cornerRadiusMm, style()));
    }

    /** A circle. */
    public PictureBuilder circle(double centreXMm, double centreYMm, double radiusMm) {
        return ellipse(centreXMm, centreYMm, radiusMm, radiusMm);
    }

    /** An upright ellipse. */
    public PictureBuilder ellipse(double centreXMm, double centreYMm, double radiusXMm, double radiusYMm) {
        return add(new Ellipse(new Point(centreXMm, centreYMm), radiusXMm, radiusYMm, style()));
    }

    /** Text that begins at a place on its baseline. An empty text draws nothing. */
    public PictureBuilder text(double xMm, double yMm, String string) {
        return text(xMm, yMm, string, Text.Anchor.START, 0);
    }

    /** Text with its middle at a place on its baseline. */
    public PictureBuilder textMiddle(double xMm, double yMm, String string) {
        return text(xMm, yMm, string, Text.Anchor.MIDDLE, 0);
    }

    /** Text that ends at a place on its baseline. */
    public PictureBuilder textEnd(double xMm, double yMm, String string) {
        return text(xMm, yMm, string, Text.Anchor.END, 0);
    }

    /** Text turned about a place on its baseline; positive is clockwise, -90 reads upwards. */
    public PictureBuilder text(double xMm, double yMm, String string, Text.Anchor anchor, double rotationDegrees) {
        return string.isEmpty() ? this
                : add(new Text(new Point(xMm, yMm), string, lettering, anchor, rotationDegrees));
    }

    /** Lines of text one below the other; the first has its baseline at {@code yMm}. */
    public PictureBuilder lines(double xMm, double yMm, double leadingMm, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            text(xMm, yMm + i * leadingMm, lines.get(i));
        }
        return this;
    }

    /** Elements with coordinates or a name of their own. */
    public PictureBuilder group(Frame frame, Consumer<PictureBuilder> content) {
        PictureBuilder inner = new PictureBuilder();
        inner.pen = pen;
        inner.fill = fill;
        inner.lettering = lettering;
        content.accept(inner);
        return add(new Group(frame, inner.elements));
    }

    /** Another picture, with its upper left corner at a place, cut off at its own edges. */
    public PictureBuilder place(double xMm, double yMm, Picture picture) {
        return add(new Group(Frame.at(xMm, yMm).clippedTo(picture.paper()), picture.elements()));
    }

    /** An element made elsewhere. */
    public PictureBuilder add(Element element) {
        elements.add(element);
        return this;
    }

    /** The elements so far. */
    public List<Element> elements() {
        return List.copyOf(elements);
    }

    /** The elements so far as a picture. */
    public Picture picture(double widthMm, double heightMm, String title) {
        return new Picture(widthMm, heightMm, title, "", elements);
    }

    private Style style() {
        return new Style(pen, fill);
    }
}
