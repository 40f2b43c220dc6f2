/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;
import org.ferrule.picture.Box;
import org.ferrule.picture.Element;
import org.ferrule.picture.Fill;
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

/** Paints elements on a page whose coordinates are millimetres with y down. */
final class PdfPainter implements Painter<IOException> {

    /** As SVG viewers have it: sharper corners are cut off. */
    private static final float MITER_LIMIT = 4;
    private static final int BUTT = 0;
    private static final int MITER = 0;
    private static final int ROUND = 1;

    private final PDPageContentStream page;
    private final Fonts fonts;

    PdfPainter(PDPageContentStream page, Fonts fonts) {
        this.page = page;
        this.fonts = fonts;
    }

    /** Paints all elements of a page. */
    void paintPage(List<Element> elements) throws IOException {
        page.setMiterLimit(MITER_LIMIT);
        paint(elements);
    }

    @Override
    public void line(Line line) throws IOException {
        use(line.stroke());
        moveTo(line.from());
        lineTo(line.to());
        page.stroke();
    }

    @Override
    public void path(Path path) throws IOException {
        fill(path);
        if (path.style().stroke().isPresent()) {
            use(path.style().stroke().get());
            trace(path);
            page.stroke();
        }
    }

    @Override
    public void text(Text text) throws IOException {
        PDType0Font font = fonts.fontFor(text.string(), text.style().face());
        float size = (float) text.style().sizeMm();
        useForAreas(text.style().ink());
        page.beginText();
        page.setFont(font, size);
        page.setTextMatrix(matrix(place(text, font.getStringWidth(text.string()) / 1000 * size)));
        page.showText(text.string());
        page.endText();
    }

    @Override
    public void group(Group group) throws IOException {
        page.saveGraphicsState();
        page.transform(matrix(group.frame().transform()));
        if (group.frame().clip().isPresent()) {
            clip(group.frame().clip().get());
        }
        paint(group.elements());
        page.restoreGraphicsState();
    }

    private void paint(List<Element> elements) throws IOException {
        for (Element element : elements) {
            element.paintOn(this);
        }
    }

    private void fill(Path path) throws IOException {
        Fill fill = path.style().fill();
        if (fill.ground().isPresent()) {
            useForAreas(fill.ground().get());
            trace(path);
            page.fillEvenOdd();
        }
        if (fill.hatch().isPresent()) {
            hatch(path, fill.hatch().get());
        }
    }

    /** Clipped lines: a pattern of PDF would neither turn nor grow with the group, and prints badly on some devices. */
    private void hatch(Path path, Hatch hatch) throws IOException {
        page.saveGraphicsState();
        trace(path);
        page.clipEvenOdd();
        hatch.over(path.bounds()).paintOn(this);
        page.restoreGraphicsState();
    }

    private void clip(Box box) throws IOException {
        page.addRect((float) box.xMm(), (float) box.yMm(), (float) box.widthMm(), (float) box.heightMm());
        page.clip();
    }

    private void use(Stroke stroke) throws IOException {
        boolean round = stroke.ends() == Stroke.Ends.ROUND;
        page.setStrokingColor(stroke.ink().red() / 255f, stroke.ink().green() / 255f, stroke.ink().blue() / 255f);
        page.setLineWidth((float) stroke.widthMm());
        page.setLineCapStyle(round ? ROUND : BUTT);
        page.setLineJoinStyle(round ? ROUND : MITER);
        page.setLineDashPattern(lengths(stroke), 0);
    }

    private void useForAreas(Ink ink) throws IOException {
        page.setNonStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
    }

    private static float[] lengths(Stroke stroke) {
        List<Double> lengths = stroke.dash().lengthsMm();
        float[] pattern = new float[lengths.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = lengths.get(i).floatValue();
        }
        return pattern;
    }

    private void trace(Path path) throws IOException {
        for (Segment segment : path.segments()) {
            trace(segment);
        }
    }

    private void trace(Segment segment) throws IOException {
        if (segment instanceof Segment.MoveTo move) {
            moveTo(move.to());
        } else if (segment instanceof Segment.LineTo line) {
            lineTo(line.to());
        } else if (segment instanceof Segment.CurveTo curve) {
            curveTo(curve);
        } else {
            page.closePath();
        }
    }

    private void moveTo(Point point) throws IOException {
        page.moveTo((float) point.xMm(), (float) point.yMm());
    }

    private void lineTo(Point point) throws IOException {
        page.lineTo((float) point.xMm(), (float) point.yMm());
    }

    private void curveTo(Segment.CurveTo curve) throws IOException {
        page.curveTo((float) curve.control1().xMm(), (float) curve.control1().yMm(),
                (float) curve.control2().xMm(), (float) curve.control2().yMm(),
                (float) curve.to().xMm(), (float) curve.to().yMm());
    }

    /** From the font, where y is up and the text begins at the origin, to where the text stands. */
    private static Transform place(Text text, double widthMm) {
        double before = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> widthMm / 2;
            case END -> widthMm;
        };
        return Transform.scaling(1, -1).then(Transform.translation(-before, 0))
                .then(Transform.rotation(text.rotationDegrees()))
                .then(Transform.translation(text.at().xMm(), text.at().yMm()));
    }

    private static Matrix matrix(Transform t) {
        return new Matrix((float) t.a(), (float) t.b(), (float) t.c(), (float) t.d(), (float) t.eMm(), (float) t.fMm());
    }
}
