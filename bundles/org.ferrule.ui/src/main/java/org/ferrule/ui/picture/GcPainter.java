/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Region;
import org.ferrule.picture.Element;
import org.ferrule.picture.Group;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Line;
import org.ferrule.picture.Painter;
import org.ferrule.picture.Shape;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.Style;
import org.ferrule.picture.Text;
import org.ferrule.picture.Transform;

/** Paints elements of a picture by the graphics of the toolkit. */
final class GcPainter implements Painter<RuntimeException> {

    /** Thinner lines fade away. */
    private static final double LEAST_PIXELS = 1;

    private final GC gc;
    private final TextPainter texts;
    private Transform toScreen;

    /**
     * A painter.
     *
     * @param toScreen from the millimetres of the picture to the coordinates of the graphics
     */
    GcPainter(GC gc, TextFonts fonts, Transform toScreen) {
        this.gc = gc;
        this.texts = new TextPainter(gc, fonts);
        this.toScreen = toScreen;
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
        gc.setFillRule(SWT.FILL_EVEN_ODD);
    }

    void paint(List<Element> elements) {
        for (Element element : elements) {
            element.paintOn(this);
        }
    }

    @Override
    public void line(Line line) {
        path(org.ferrule.picture.Path.polyline(List.of(line.from(), line.to()), Style.of(line.stroke())));
    }

    @Override
    public void path(org.ferrule.picture.Path shape) {
        Path path = ScreenPath.of(gc.getDevice(), shape.transformed(toScreen));
        try {
            shape.style().fill().ground().ifPresent(ink -> {
                gc.setBackground(ScreenInks.color(ink));
                gc.fillPath(path);
            });
            shape.style().fill().hatch().ifPresent(hatch -> hatch(shape, path, hatch));
            shape.style().stroke().ifPresent(stroke -> stroke(path, stroke));
        } finally {
            path.dispose();
        }
    }

    private void stroke(Path path, Stroke stroke) {
        gc.setForeground(ScreenInks.color(stroke.ink()));
        gc.setLineAttributes(attributes(stroke));
        gc.drawPath(path);
    }

    private LineAttributes attributes(Stroke stroke) {
        boolean round = stroke.ends() == Stroke.Ends.ROUND;
        LineAttributes attributes = new LineAttributes((float) Math.max(LEAST_PIXELS, pixels(stroke.widthMm())),
                round ? SWT.CAP_ROUND : SWT.CAP_FLAT, round ? SWT.JOIN_ROUND : SWT.JOIN_MITER);
        if (!stroke.dash().isSolid()) {
            attributes.style = SWT.LINE_CUSTOM;
            attributes.dash = dash(stroke.dash().lengthsMm());
        }
        return attributes;
    }

    private float[] dash(List<Double> lengthsMm) {
        float[] pixels = new float[lengthsMm.size()];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = (float) pixels(lengthsMm.get(i));
        }
        return pixels;
    }

    private double pixels(double mm) {
        return mm * toScreen.scale();
    }

    private void hatch(Shape shape, Path path, Hatch hatch) {
        within(ScreenPath.region(gc.getDevice(), path), () -> hatch.over(shape.bounds()).paintOn(this));
    }

    @Override
    public void group(Group group) {
        Transform outer = toScreen;
        toScreen = group.frame().transform().then(outer);
        if (group.frame().clip().isPresent()) {
            Path box = ScreenPath.of(gc.getDevice(), org.ferrule.picture.Path
                    .polygon(group.frame().clip().get().corners(), Style.of(org.ferrule.picture.Fill.NONE))
                    .transformed(toScreen));
            within(ScreenPath.region(gc.getDevice(), box), () -> paint(group.elements()));
            box.dispose();
        } else {
            paint(group.elements());
        }
        toScreen = outer;
    }

    /** Paints within a region, which is disposed of, and within what was the limit before, also that of the control. */
    private void within(Region region, Runnable painting) {
        Region outer = new Region(gc.getDevice());
        gc.getClipping(outer);
        region.intersect(outer);
        gc.setClipping(region);
        painting.run();
        gc.setClipping(outer);
        region.dispose();
        outer.dispose();
    }

    @Override
    public void text(Text text) {
        texts.paint(text, toScreen);
    }
}
