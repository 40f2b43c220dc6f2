/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.picture.Box;
import org.ferrule.picture.Element;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;

/** An upright line across a picture with what is read there. It keeps its value when the picture is laid out anew. */
final class PictureCursor {

    private static final TextStyle LETTERING = TextStyle.ofPt(7.5);
    private static final double PADDING_MM = 1.2;
    private static final double LINE_MM = 0.3;
    private static final double ROUNDING_MM = 1e-6;

    private final List<Consumer<OptionalDouble>> listeners = new ArrayList<>();
    private final Function<Picture, Optional<PictureRuler>> rulers;
    private Optional<PictureRuler> ruler = Optional.empty();
    private OptionalDouble value = OptionalDouble.empty();

    PictureCursor(Function<Picture, Optional<PictureRuler>> rulers) {
        this.rulers = rulers;
    }

    void onMove(Consumer<OptionalDouble> listener) {
        listeners.add(listener);
    }

    /** The picture was laid out anew; without one nothing can be read. */
    void laid(Picture picture) {
        ruler = picture == null ? Optional.empty() : rulers.apply(picture);
    }

    /** Puts the cursor at a value, or takes it away. */
    void put(OptionalDouble next) {
        if (!next.equals(value)) {
            value = next;
            listeners.forEach(listener -> listener.accept(value));
        }
    }

    /** Puts the cursor at a place of the picture, if it may stand there. */
    boolean putAt(Point place) {
        boolean inside = ruler.filter(r -> r.area().contains(place)).isPresent();
        if (inside) {
            put(OptionalDouble.of(ruler.get().valueAt(place.xMm())));
        }
        return inside;
    }

    /** Moves the cursor by steps; one that is not shown starts in the middle. */
    boolean step(int steps, boolean large) {
        if (ruler.isEmpty()) {
            return false;
        }
        double middle = ruler.get().valueAt(ruler.get().area().centre().xMm());
        double step = ruler.get().step(large);
        put(OptionalDouble.of(value.isPresent()
                ? Math.round((value.getAsDouble() + steps * step) / step) * step : Math.round(middle / step) * step));
        return true;
    }

    /** How far the cursor lies outside of what can be seen, in millimetres of the picture; 0 inside. */
    double outsideMm() {
        if (ruler.isEmpty() || value.isEmpty()) {
            return 0;
        }
        Box area = ruler.get().area();
        double x = ruler.get().xMm(value.getAsDouble());
        if (x < area.xMm() - ROUNDING_MM) {
            return x - area.xMm();
        }
        return x > area.rightMm() + ROUNDING_MM ? x - area.rightMm() : 0;
    }

    /** Puts the cursor at the edge of what can be seen, if it lies beyond. */
    void keepInside() {
        if (outsideMm() != 0) {
            Box area = ruler.get().area();
            put(OptionalDouble.of(ruler.get().valueAt(outsideMm() < 0 ? area.xMm() : area.rightMm())));
        }
    }

    /** The x of the picture at which the cursor stands. */
    Optional<Double> xMm() {
        return value.isPresent() ? ruler.map(r -> r.xMm(value.getAsDouble())) : Optional.empty();
    }

    /** What is read, as it is shown. */
    List<String> reading() {
        return ruler.isPresent() && value.isPresent() ? ruler.get().read(value.getAsDouble()) : List.of();
    }

    /** The line and the words, in millimetres of the picture; nothing while the cursor cannot be seen. */
    List<Element> elements() {
        if (ruler.isEmpty() || value.isEmpty() || outsideMm() != 0) {
            return List.of();
        }
        Box area = ruler.get().area();
        double x = ruler.get().xMm(value.getAsDouble());
        PictureBuilder builder = new PictureBuilder();
        builder.pen(DrawingInks.LIMIT, LINE_MM).line(x, area.yMm(), x, area.bottomMm());
        words(x, area, builder);
        return builder.elements();
    }

    /** Beside the line, where there is more room. */
    private void words(double x, Box area, PictureBuilder builder) {
        List<String> lines = reading();
        if (lines.isEmpty()) {
            return;
        }
        TextLayout layout = TextLayout.standard();
        double leading = layout.measure().leadingMm(LETTERING);
        double width = layout.widestMm(lines, LETTERING) + 2 * PADDING_MM;
        double left = x > area.centre().xMm() ? x - PADDING_MM - width : x + PADDING_MM;
        builder.fill(Ink.PAPER).pen(Ink.RULE, 0.2)
                .rect(left, area.yMm() + PADDING_MM, width, lines.size() * leading + 2 * PADDING_MM);
        builder.lettering(LETTERING).lines(left + PADDING_MM,
                area.yMm() + 2 * PADDING_MM + layout.measure().ascentMm(LETTERING), leading, lines);
    }
}
