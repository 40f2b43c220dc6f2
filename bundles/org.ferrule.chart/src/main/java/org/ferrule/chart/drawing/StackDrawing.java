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
    private static final double LABELS = 0.36;
    private static final double MOST_LABELS_MM = 70;
    private static final double GLYPH_MM = 2.6;
    private static final double HUB_MM = 3;

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
        String caption = words.phrases().fill("stack.drawing.caption",
                String.format(Locale.ROOT, "%.0f", painter.exaggeration()));
        g.lettering(zones.smallStyle()).lines(zones.left(), zones.captionBaseline(), Zones.leading(zones.smallStyle()),
                TextLayout.standard().wrap(caption, zones.smallStyle(), zones.right() - zones.left(),
                        zones.captionRows()));
        return g.picture(widthMm, heightMm, title).described(Printable.line(String.join("; ", described(answer, phase))));
    }

    private static Box room(Zones zones) {
        double top = zones.titleBaseline() + 3;
        double bottom = zones.captionBaseline() - Zones.leading(zones.smallStyle()) - 2;
        double labels = Math.min(MOST_LABELS_MM, (zones.right() - zones.left()) * LABELS);
        return new Box(zones.left() + HUB_MM, top, Math.max(10, zones.right() - zones.left() - labels - HUB_MM),
                Math.max(4, bottom - top));
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
        List<LevelAnswer> levels = answer.levels();
        int rows = levels.stream().mapToInt(l -> l.level().beside().size() + 1).sum();
        double step = Math.min(room.heightMm() / rows, 2.4 * Zones.leading(zones.lettering()));
        double y = room.yMm() + (room.heightMm() - step * (rows - 1)) / 2;
        int body = 0;
        for (int i = 0; i < levels.size(); i++) {
            boolean valve = levels.get(i).level().device().device().device().kind() == DeviceKind.HAEMOSTASIS_VALVE;
            for (int j = 0; j <= levels.get(i).level().beside().size(); j++) {
                Optional<NestedBody> drawn = valve ? Optional.empty() : Optional.of(bodies.get(body++));
                Label label = new Label(i, device(levels.get(i), j), answerOf(levels.get(i), j, phase), y);
                g.group(Frame.named("level:" + i), inner -> {
                    drawn.ifPresentOrElse(b -> leader(inner, room, painter, b, label.y()),
                            () -> painter.valve(inner, thickest));
                    label(inner, zones, room, label);
                });
                y += step;
            }
        }
    }

    private record Label(int level, Device device, Optional<PhaseAnswer> answer, double y) {
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
        double x = painter.x(body.tipMm());
        g.pen(Stroke.of(Ink.MUTED, 0.12).dashed(Dash.of(0.4, 0.5))).noFill();
        g.polyline(new Point(x, painter.y(body.offsetMm())), new Point(room.rightMm() + 1.5, y),
                new Point(room.rightMm() + 3, y));
    }

    private void label(PictureBuilder g, Zones zones, Box room, Label label) {
        double x = room.rightMm() + 4;
        if (label.answer().isPresent()) {
            VerdictLook.of(label.answer().get()).drawGlyph(g, new Point(x + GLYPH_MM / 2, label.y()), GLYPH_MM,
                    Scheme.LIGHT);
        }
        double left = x + GLYPH_MM + 1.2;
        TextStyle style = zones.lettering();
        double base = label.y() + TextMeasure.standard().capHeightMm(style) / 2;
        String clearance = label.answer().flatMap(PhaseAnswer::clearance)
                .map(c -> words.lengths().clearanceMm(c.worst())).orElse("");
        TextStyle figures = style.in(Ink.MUTED);
        double right = zones.right() - TextMeasure.standard().widthMm(clearance, figures);
        g.lettering(figures).text(right, base, clearance);
        String name = label.device().name().isEmpty() ? label.device().id() : label.device().name();
        g.lettering(style).text(left, base, TextLayout.standard().shorten(name, style, right - left - 1));
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
