/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Outline;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextLayout;

/** A rigid part in a bend, to scale: in the middle it touches the inner wall, at its ends the outer one. */
final class BendScene {
    private static final double SHARE = 0.62;
    private static final double BEYOND = 1.25;
    private static final double LINE_MM = 0.3;

    private final BendRoom bend;
    private final ReasonWords words;
    private final Zones zones;
    private final Box room;
    private final double lumen;
    private final double radius;
    private final double scale;
    private final Point centre;

    BendScene(BendRoom bend, ReasonWords words, Zones zones) {
        this.bend = bend;
        this.words = words;
        this.zones = zones;
        double top = zones.titleBaseline() + 1.5;
        double bottom = zones.height() - 1 - Zones.leading(zones.smallStyle());
        this.room = new Box(zones.left(), top, (zones.right() - zones.left()) * SHARE, Math.max(6, bottom - top));
        this.lumen = bend.freeLumen().orElse(bend.deviceDiameter()).mm();
        this.radius = bend.bendRadius().mm();
        double half = Math.min(radius * 0.98, BEYOND * bend.rigidLength().mm() / 2);
        double sagitta = radius - Math.sqrt(Math.max(0, radius * radius - half * half));
        double high = sagitta + 2 * Math.max(lumen, bend.deviceDiameter().mm());
        this.scale = Math.min(room.widthMm() / (2 * half), room.heightMm() / high);
        double drawn = high * scale;
        double top1 = room.centre().yMm() - drawn / 2 + Math.max(lumen, bend.deviceDiameter().mm()) * scale;
        this.centre = new Point(room.centre().xMm(), top1 + radius * scale);
    }

    /** Draws it, and tells what is drawn. */
    String draw(PictureBuilder g) {
        g.group(Frame.named("bend"), this::bent);
        g.group(Frame.named("rigid"), this::rigid);
        List<String> lines = lines();
        new SideLabels(zones, room.rightMm() + 3).words(g, lines, room);
        g.lettering(zones.smallStyle()).text(zones.left(), zones.height() - 1.6, TextLayout.standard().shorten(
                words.phrases().get("evidence.bend.caption"), zones.smallStyle(), zones.right() - zones.left()));
        return String.join("; ", lines);
    }

    private void bent(PictureBuilder g) {
        double sweep = Math.toDegrees(2 * Math.asin(Math.min(0.98, BEYOND * bend.rigidLength().mm() / 2 / radius)));
        double start = 270 - sweep / 2;
        double inner = Math.max(radius * 0.01, radius - lumen / 2) * scale;
        double outer = (radius + lumen / 2) * scale;
        if (bend.vessel()) {
            g.noFill().pen(Stroke.of(DrawingInks.WALL, LINE_MM).dashed(Dash.DASHED)).path(arc(radius * scale, start,
                    sweep));
            return;
        }
        Outline band = arc(outer, start, sweep).arc(centre.xMm(), centre.yMm(), inner, start + sweep, -sweep).close();
        g.noPen().fill(DrawingInks.LUMEN).path(band);
        g.noFill().pen(DrawingInks.WALL, 2 * LINE_MM).path(arc(outer, start, sweep)).path(arc(inner, start, sweep));
    }

    private Outline arc(double r, double start, double sweep) {
        double angle = Math.toRadians(start);
        return Outline.from(centre.xMm() + r * Math.cos(angle), centre.yMm() + r * Math.sin(angle))
                .arc(centre.xMm(), centre.yMm(), r, start, sweep);
    }

    private void rigid(PictureBuilder g) {
        double below = bend.vessel() ? radius - bend.deviceDiameter().mm() / 2 : radius - lumen / 2;
        double height = bend.deviceDiameter().mm() * scale;
        double width = bend.rigidLength().mm() * scale;
        double bottom = centre.yMm() - below * scale;
        g.fill(DrawingInks.SHAFT).pen(passes() ? DrawingInks.SHAFT_LINE : DrawingInks.LIMIT, LINE_MM)
                .rect(centre.xMm() - width / 2, bottom - height, width, height);
    }

    private boolean passes() {
        return bend.vessel() || bend.longest().filter(l -> l.compareTo(bend.rigidLength()) >= 0).isPresent();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(phrase("evidence.bend.rigid", words.section(bend.deviceSection()),
                words.lengths().shortfall(bend.rigidLength()), words.lengths().device(bend.deviceDiameter())));
        lines.add(phrase("evidence.bend.radius", words.lengths().length(bend.bendRadius())));
        bend.freeLumen().ifPresent(free -> lines.add(phrase("evidence.bend.lumen", words.lengths().lumen(free))));
        bend.longest().ifPresent(
                longest -> lines.add(phrase("evidence.bend.longest", words.lengths().length(longest))));
        bend.leastRadius().ifPresent(least -> lines.add(phrase(
                bend.vessel() ? "evidence.bend.straighten" : "evidence.bend.least", words.lengths().shortfall(least))));
        return lines;
    }

    private String phrase(String key, String... values) {
        return words.phrases().fill(key, values);
    }
}
