/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.evidence.SharedSection.Member;
import org.ferrule.fit.evidence.SharedSection.Part;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextLayout;

/** What lies side by side in a lumen, to scale, placed as the solver placed it; words on the right. */
final class SharedScene {
    private static final double WALL_MM = 1.8;
    private static final double LINE_MM = 0.3;

    private final SharedSection section;
    private final ReasonWords words;
    private final Zones zones;
    private final Box square;
    private final Point middle;
    private final double scale;

    SharedScene(SharedSection section, ReasonWords words, Zones zones) {
        this.section = section;
        this.words = words;
        this.zones = zones;
        double top = zones.titleBaseline() + 1.5;
        double bottom = zones.height() - 1 - Zones.leading(zones.smallStyle());
        double side = Math.max(6, Math.min(bottom - top, zones.width() * 0.48));
        this.square = new Box(zones.left(), top + (bottom - top - side) / 2, side, side);
        this.middle = square.centre();
        double widest = Math.max(section.lumen().high().mm(), section.needed().mm());
        this.scale = (side - 2 * WALL_MM) / widest;
    }

    /** Draws it, and tells what is drawn. */
    String draw(PictureBuilder g) {
        g.group(Frame.named("lumen"), this::lumen);
        Map<String, List<Member>> bodies = new LinkedHashMap<>();
        section.members().forEach(
                m -> bodies.computeIfAbsent(m.device() + "#" + m.body(), key -> new ArrayList<>()).add(m));
        bodies.values().forEach(body -> g.group(Frame.named("body:" + body.get(0).device()), b -> body(b, body)));
        g.group(Frame.named("clearance"), c -> c.noFill()
                .pen(Stroke.of(overlaps() ? DrawingInks.LIMIT : DrawingInks.SHAFT_LINE, 0.2).dashed(Dash.DASHED))
                .circle(middle.xMm(), middle.yMm(), section.needed().mm() / 2 * scale));
        List<SideLabel> labels = labels(bodies.values().stream().toList());
        new SideLabels(zones, square.rightMm() + 4).draw(g, labels, square);
        caption(g);
        return String.join("; ", labels.stream().map(l -> String.join(" ", l.lines())).toList());
    }

    private boolean overlaps() {
        return section.needed().compareTo(section.lumen().centre()) > 0;
    }

    private void lumen(PictureBuilder g) {
        double outer = section.lumen().high().mm() / 2 * scale;
        g.noPen().fill(DrawingInks.WALL).circle(middle.xMm(), middle.yMm(), outer + WALL_MM);
        g.fill(DrawingInks.TOLERANCE).circle(middle.xMm(), middle.yMm(), outer);
        g.fill(DrawingInks.LUMEN).circle(middle.xMm(), middle.yMm(), section.lumen().low().mm() / 2 * scale);
        g.noFill().pen(DrawingInks.SHAFT_LINE, LINE_MM)
                .circle(middle.xMm(), middle.yMm(), section.lumen().centre().mm() / 2 * scale);
    }

    private void body(PictureBuilder g, List<Member> body) {
        boolean wire = body.get(0).part() == Part.WIRE;
        double line = body.get(0).moving() ? 2 * LINE_MM : LINE_MM;
        g.fill(wire ? DrawingInks.WIRE : DrawingInks.SHAFT)
                .pen(wire ? DrawingInks.WIRE_LINE : DrawingInks.SHAFT_LINE, line);
        if (body.size() == 2 && body.get(0).filled()) {
            g.path(stadium(body.get(0), body.get(1)));
        } else {
            body.forEach(m -> g.circle(x(m), y(m), radius(m)));
        }
    }

    private Outline stadium(Member a, Member b) {
        double turn = Math.toDegrees(Math.atan2(y(b) - y(a), x(b) - x(a)));
        double r = radius(a);
        double up = Math.toRadians(turn + 90);
        return Outline.from(x(a) + r * Math.cos(up), y(a) + r * Math.sin(up)).arc(x(a), y(a), r, turn + 90, 180)
                .arc(x(b), y(b), r, turn - 90, 180).close();
    }

    private double x(Member member) {
        return middle.xMm() + member.disc().xMm() * scale;
    }

    private double y(Member member) {
        return middle.yMm() - member.disc().yMm() * scale;
    }

    private double radius(Member member) {
        return member.disc().diameter().mm() / 2 * scale;
    }

    private List<SideLabel> labels(List<List<Member>> bodies) {
        List<SideLabel> labels = new ArrayList<>();
        double r = section.lumen().centre().mm() / 2 * scale;
        labels.add(new SideLabel(List.of(phrase("drawing.lumen", BandWords.range(words, section.lumen()))),
                new Point(middle.xMm() + r * 0.5, middle.yMm() - r * 0.87), Ink.TEXT));
        for (List<Member> body : bodies) {
            Member m = body.get(0);
            labels.add(new SideLabel(List.of(bodyWords(body)),
                    new Point(x(m) + radius(m) * 0.4, y(m)), m.moving() ? Ink.TEXT : Ink.MUTED));
        }
        labels.add(new SideLabel(together(),
                new Point(middle.xMm() + section.needed().mm() / 2 * scale * 0.6,
                        middle.yMm() + section.needed().mm() / 2 * scale * 0.8),
                overlaps() ? DrawingInks.LIMIT : Ink.TEXT));
        return labels;
    }

    private List<String> together() {
        String needed = phrase("evidence.together", words.lengths().device(section.needed()));
        boolean proved = section.neededAtLeast().equals(section.needed());
        return proved ? List.of(needed)
                : List.of(needed, phrase("evidence.atLeast", words.lengths().lumen(section.neededAtLeast())));
    }

    private String bodyWords(List<Member> body) {
        Member m = body.get(0);
        String size = BandWords.range(words, m.figure());
        String part = switch (m.part()) {
            case WIRE -> phrase("evidence.wire", m.device());
            case PUSH_ROD -> phrase("evidence.rod", m.device());
            case SHAFT -> m.device() + ", " + words.section(m.section());
        };
        return part + " " + size;
    }

    private void caption(PictureBuilder g) {
        String number = new BigDecimal(scale).round(new MathContext(2)).stripTrailingZeros().toPlainString();
        g.lettering(zones.smallStyle()).text(zones.left(), zones.height() - 1.6, TextLayout.standard()
                .shorten(phrase("evidence.section.caption", number), zones.smallStyle(), zones.right() - zones.left()));
    }

    private String phrase(String key, String... values) {
        return words.phrases().fill(key, values);
    }
}
