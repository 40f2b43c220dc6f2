/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.stack.Crossing;
import org.ferrule.fit.stack.LevelAnswer;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/**
 * A stack as a section along it: devices in each other, tips to the right, each with its name, its verdict and its worst
 * clearance. Diameters and lengths have different scales, which the caption says. Groups are named {@code level:NUMBER}
 * for hit-testing.
 */
public final class StackDrawing {
    private static final double MARGIN_MM = 30;
    private static final double LABELS = 0.47;
    private static final double MOST_LABELS_MM = 70;
    private static final double GLYPH_MM = 3.2;
    private static final double HUB_MM = 3;
    private static final double SMALLEST_PT = 6.5;
    /** With less room for labels clearances are left out. */
    private static final double LEAST_LABEL_MM = 46;
    private static final double TALLEST = 0.9;

    private final ReasonWords words;

    /** Drawings with these words and units. */
    public StackDrawing(ReasonWords words) {
        this.words = words;
    }

    /** The stack, going in or coming out. */
    public Picture of(StackAnswer answer, Phase phase, double widthMm, double heightMm) {
        Zones zones = new Zones(widthMm, heightMm);
        PictureBuilder g = new PictureBuilder();
        String title = words.phrases().fill("stack.drawing.title", words.phrases().get("phase." + phase));
        g.lettering(zones.titleStyle()).text(zones.left(), zones.titleBaseline(),
                TextLayout.standard().shorten(title, zones.titleStyle(), zones.right() - zones.left()));
        List<NestedBody> bodies = Nesting.of(answer.levels(), phase);
        Box room = room(zones);
        double thickest = bodies.stream()
                .mapToDouble(b -> b.thicknessMm() + 2 * Math.abs(b.offsetMm())).max().orElse(1);
        NestedPainter painter = new NestedPainter(room, from(bodies), to(bodies), thickest);
        painter.edge(g);
        bodies.forEach(body -> g.group(Frame.named("level:" + body.level()), inner -> painter.draw(inner, body)));
        labels(g, zones, room, answer, phase, bodies, painter, thickest);
        String caption = words.phrases().fill(
                showsClearances(zones, room) ? "stack.drawing.caption" : "stack.drawing.caption.brief",
                String.format(Locale.ROOT, "%.0f", painter.exaggeration()));
        g.lettering(zones.smallStyle()).lines(zones.left(), zones.captionBaseline(), Zones.leading(zones.smallStyle()),
                TextLayout.standard().wrap(caption, zones.smallStyle(), zones.right() - zones.left(),
                        zones.captionRows()));
        return g.picture(widthMm, heightMm, title)
                .described(Printable.line(String.join("; ", described(answer, phase))));
    }

    private static Box room(Zones zones) {
        double top = zones.titleBaseline() + 3;
        double bottom = zones.captionBaseline() - Zones.leading(zones.smallStyle()) - 2;
        double labels = Math.min(MOST_LABELS_MM, (zones.right() - zones.left()) * LABELS);
        double width = Math.max(10, zones.right() - zones.left() - labels - HUB_MM);
        return new Box(zones.left() + HUB_MM, top, width, Math.max(4, Math.min(TALLEST * width, bottom - top)));
    }

    /** All tips and collars are shown, with some of what lies proximal to them. */
    private static double from(List<NestedBody> bodies) {
        return bodies.stream().mapToDouble(b -> b.collarMm().orElse(b.tipMm())).min().orElse(0) - MARGIN_MM;
    }

    private static double to(List<NestedBody> bodies) {
        return bodies.stream().mapToDouble(NestedBody::tipMm).max().orElse(0) + MARGIN_MM / 10;
    }

    private void labels(PictureBuilder g, Zones zones, Box room, StackAnswer answer, Phase phase,
            List<NestedBody> bodies, NestedPainter painter, double thickest) {
        List<Label> labels = apart(wished(answer, phase, bodies, painter), zones, room);
        for (Label label : labels) {
            g.group(Frame.named("level:" + label.level()), inner -> {
                label.body().ifPresentOrElse(b -> leader(inner, room, painter, b, label.y()),
                        () -> painter.valve(inner, thickest));
                label(inner, zones, room, label);
            });
        }
    }

    /** A name beside its device; a valve has no body. */
    private record Label(int level, Device device, Optional<PhaseAnswer> answer, Optional<NestedBody> body, double y) {
        Label at(double otherY) {
            return new Label(level, device, answer, body, otherY);
        }
    }

    /** Each beside the upper wall at the tip, where what lies inside leaves the place to its right free. */
    private static List<Label> wished(StackAnswer answer, Phase phase, List<NestedBody> bodies,
            NestedPainter painter) {
        List<Label> labels = new ArrayList<>();
        int body = 0;
        double y = painter.y(0);
        for (int i = 0; i < answer.levels().size(); i++) {
            LevelAnswer level = answer.levels().get(i);
            boolean valve = level.level().device().device().device().kind() == DeviceKind.HAEMOSTASIS_VALVE;
            for (int j = 0; j <= level.level().beside().size(); j++) {
                Optional<NestedBody> drawn = valve ? Optional.empty() : Optional.of(bodies.get(body++));
                y = drawn.map(painter::upperWallAtTip).orElse(y);
                labels.add(new Label(i, device(level, j), answerOf(level, j, phase), drawn, y));
            }
        }
        return labels;
    }

    /** Moved up, and where there is no room down again, until they keep apart. */
    private static List<Label> apart(List<Label> wished, Zones zones, Box room) {
        double step = Math.min(room.heightMm() / wished.size(), 1.5 * Zones.leading(zones.lettering()));
        List<Label> labels = new ArrayList<>(wished);
        double limit = room.bottomMm();
        for (int i = labels.size() - 1; i >= 0; i--) {
            labels.set(i, labels.get(i).at(Math.min(labels.get(i).y(), limit)));
            limit = labels.get(i).y() - step;
        }
        limit = room.yMm() + step / 4;
        for (int i = 0; i < labels.size(); i++) {
            labels.set(i, labels.get(i).at(Math.max(labels.get(i).y(), limit)));
            limit = labels.get(i).y() + step;
        }
        return labels;
    }

    private static Device device(LevelAnswer level, int place) {
        return place < level.level().beside().size() ? level.level().beside().get(place).device().device()
                : level.level().device().device().device();
    }

    /** What decides about one device of a level. */
    private static Optional<PhaseAnswer> answerOf(LevelAnswer level, int place, Phase phase) {
        Device device = device(level, place);
        List<Crossing> crossings = level.crossings().stream()
                .filter(c -> c.question().inner().device().equals(device)).toList();
        return new LevelAnswer(level.level(), crossings).deciding(phase).map(c -> c.answer().in(phase));
    }

    private static void leader(PictureBuilder g, Box room, NestedPainter painter, NestedBody body, double y) {
        g.pen(Stroke.of(Ink.MUTED, 0.15).dashed(Dash.of(0.4, 0.5))).noFill();
        g.polyline(new Point(painter.x(body.tipMm()), painter.upperWallAtTip(body)),
                new Point(room.rightMm() + 1.5, y), new Point(room.rightMm() + 3, y));
    }

    private void label(PictureBuilder g, Zones zones, Box room, Label label) {
        double x = room.rightMm() + 4;
        if (label.answer().isPresent()) {
            VerdictLook.of(label.answer().get()).drawSign(g, new Point(x + GLYPH_MM / 2, label.y()), GLYPH_MM,
                    Scheme.LIGHT);
        }
        double left = x + GLYPH_MM + 1.2;
        TextStyle style = zones.lettering();
        double base = label.y() + TextMeasure.standard().capHeightMm(style) / 2;
        String clearance = label.body().isEmpty() ? words.phrases().get("stack.drawing.hub")
                : label.answer().flatMap(PhaseAnswer::clearance).map(c -> words.lengths().clearance(c.worst()))
                        .orElse("");
        TextStyle figures = style.in(Ink.MUTED);
        double right = zones.right() - TextMeasure.standard().widthMm(clearance, figures);
        boolean isRoom = showsClearances(zones, room);
        if (isRoom) {
            g.lettering(figures).text(right, base, clearance);
        }
        String name = label.device().name().isEmpty() ? label.device().id() : label.device().name();
        double roomMm = (isRoom ? right : zones.right()) - left - 1;
        TextStyle smaller = fitting(name, style, roomMm);
        g.lettering(smaller).text(left, base, TextLayout.standard().shorten(name, smaller, roomMm));
    }

    /** Lettering in which a name has room, if that can still be read. */
    private static TextStyle fitting(String name, TextStyle style, double roomMm) {
        double width = TextMeasure.standard().widthMm(name, style);
        return width <= roomMm ? style : style.sized(Math.max(SMALLEST_PT, style.sizePt() * roomMm / width));
    }

    private static boolean showsClearances(Zones zones, Box room) {
        return zones.right() - room.rightMm() > LEAST_LABEL_MM;
    }

    private List<String> described(StackAnswer answer, Phase phase) {
        AnswerWords answers = new AnswerWords(words);
        List<String> described = new ArrayList<>();
        for (LevelAnswer level : answer.levels()) {
            String name = device(level, level.level().beside().size()).name();
            described.add(level.deciding(phase).map(c -> name + ": " + answers.summary(c.answer().in(phase)))
                    .orElse(name));
        }
        return described;
    }
}
