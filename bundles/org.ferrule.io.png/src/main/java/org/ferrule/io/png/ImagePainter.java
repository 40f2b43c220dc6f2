/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.png;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;

import org.ferrule.picture.Box;
import org.ferrule.picture.Element;
import org.ferrule.picture.Group;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Line;
import org.ferrule.picture.Painter;
import org.ferrule.picture.Path;
import org.ferrule.picture.Point;
import org.ferrule.picture.Segment;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.Text;
import org.ferrule.picture.Transform;

/** Paints elements by graphics whose coordinates are millimetres with y down. */
final class ImagePainter implements Painter<IOException> {

    /** As SVG viewers have it: sharper corners are cut off. */
    private static final float MITER_LIMIT = 4;

    private final Graphics2D graphics;
    private final Letters letters;

    ImagePainter(Graphics2D graphics, Letters letters) {
        this.graphics = graphics;
        this.letters = letters;
    }

    void paint(List<Element> elements) throws IOException {
        for (Element element : elements) {
            element.paintOn(this);
        }
    }

    @Override
    public void line(Line line) {
        draw(new Line2D.Double(line.from().xMm(), line.from().yMm(), line.to().xMm(), line.to().yMm()), line.stroke());
    }

    @Override
    public void path(Path path) throws IOException {
        Path2D shape = shape(path);
        path.style().fill().ground().ifPresent(ink -> fill(shape, ink));
        if (path.style().fill().hatch().isPresent()) {
            hatch(path, shape, path.style().fill().hatch().get());
        }
        path.style().stroke().ifPresent(stroke -> draw(shape, stroke));
    }

    @Override
    public void text(Text text) throws IOException {
        fill(letters.of(text), text.style().ink());
    }

    @Override
    public void group(Group group) throws IOException {
        Graphics2D inner = (Graphics2D) graphics.create();
        try {
            inner.transform(affine(group.frame().transform()));
            group.frame().clip().ifPresent(box -> inner.clip(rectangle(box)));
            new ImagePainter(inner, letters).paint(group.elements());
        } finally {
            inner.dispose();
        }
    }

    private void hatch(Path path, Path2D shape, Hatch hatch) throws IOException {
        Graphics2D inner = (Graphics2D) graphics.create();
        try {
            inner.clip(shape);
            new ImagePainter(inner, letters).group(hatch.over(path.bounds()));
        } finally {
            inner.dispose();
        }
    }

    private void fill(java.awt.Shape shape, Ink ink) {
        graphics.setColor(color(ink));
        graphics.fill(shape);
    }

    private void draw(java.awt.Shape shape, Stroke stroke) {
        graphics.setColor(color(stroke.ink()));
        graphics.setStroke(basic(stroke));
        graphics.draw(shape);
    }

    private static BasicStroke basic(Stroke stroke) {
        boolean round = stroke.ends() == Stroke.Ends.ROUND;
        return new BasicStroke((float) stroke.widthMm(), round ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT,
                round ? BasicStroke.JOIN_ROUND : BasicStroke.JOIN_MITER, MITER_LIMIT, dash(stroke), 0);
    }

    /** The lengths of a dash; the platform's word for a solid line is null. */
    private static float[] dash(Stroke stroke) {
        List<Double> lengths = stroke.dash().lengthsMm();
        if (lengths.isEmpty()) {
            return null;
        }
        float[] dash = new float[lengths.size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = lengths.get(i).floatValue();
        }
        return dash;
    }

    private static Path2D shape(Path path) {
        Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        path.segments().forEach(segment -> add(segment, shape));
        return shape;
    }

    private static void add(Segment segment, Path2D shape) {
        if (segment instanceof Segment.MoveTo move) {
            shape.moveTo(move.to().xMm(), move.to().yMm());
        } else if (segment instanceof Segment.LineTo line) {
            shape.lineTo(line.to().xMm(), line.to().yMm());
        } else if (segment instanceof Segment.CurveTo curve) {
            Point a = curve.control1();
            Point b = curve.control2();
            shape.curveTo(a.xMm(), a.yMm(), b.xMm(), b.yMm(), curve.to().xMm(), curve.to().yMm());
        } else {
            shape.closePath();
        }
    }

    private static Rectangle2D rectangle(Box box) {
        return new Rectangle2D.Double(box.xMm(), box.yMm(), box.widthMm(), box.heightMm());
    }

    private static AffineTransform affine(Transform t) {
        return new AffineTransform(t.a(), t.b(), t.c(), t.d(), t.eMm(), t.fMm());
    }

    private static Color color(Ink ink) {
        return new Color(ink.red(), ink.green(), ink.blue());
    }
}
