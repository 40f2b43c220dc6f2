/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.drawing.Member.Part;
import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextLayout;

/** A lumen across, on the left; words with leaders on the right. What lies in the lumen lies on its floor. */
final class CrossScene {
    private static final double WALL_MM = 1.8;
    private static final double GUESS_MM = 1.8;
    private static final double LINE_MM = 0.3;

    private final FitQuestion question;
    private final PhaseAnswer answer;
    private final ReasonWords words;
    private final Zones zones;
    private final Box square;
    private final Point middle;

    CrossScene(FitQuestion question, PhaseAnswer answer, ReasonWords words, Zones zones) {
        this.question = question;
        this.answer = answer;
        this.words = words;
        this.zones = zones;
        double top = zones.titleBaseline() + 1.5;
        double bottom = zones.height() - 1 - Zones.leading(zones.smallStyle());
        double side = Math.max(6, Math.min(bottom - top, zones.width() * 0.48));
        this.square = new Box(zones.left(), top + (bottom - top - side) / 2, side, side);
        this.middle = square.centre();
    }

    void title(PictureBuilder g, String title) {
        g.lettering(zones.titleStyle()).text(zones.left(), zones.titleBaseline(),
                TextLayout.standard().shorten(title, zones.titleStyle(), zones.right() - zones.left()));
    }

    void known(PictureBuilder g, Occupants occupants) {
        Figure lumen = answer.limiting().orElseThrow().lumenDiameter();
        Figure needed = answer.limiting().orElseThrow().deviceDiameter();
        double sticksOut = Math.max(0, needed.high().mm() - lumen.low().mm());
        double scale = (square.widthMm() - 2 * WALL_MM) / (lumen.high().mm() + 2 * sticksOut);
        lumen(g, lumen, scale);
        double floor = middle.yMm() + lumen.centre().mm() / 2 * scale;
        Point centre = new Point(middle.xMm(), floor - needed.centre().mm() / 2 * scale);
        members(g, occupants, centre, scale);
        if (sticksOut > 0) {
            g.noFill().pen(Stroke.of(DrawingInks.LIMIT, LINE_MM).dashed(Dash.DASHED)).circle(middle.xMm(),
                    middle.yMm(), lumen.centre().mm() / 2 * scale);
        }
        if (occupants.members().size() > 1) {
            g.noFill().pen(Stroke.of(DrawingInks.SHAFT_LINE, 0.2).dashed(Dash.DASHED))
                    .circle(centre.xMm(), centre.yMm(), needed.centre().mm() / 2 * scale);
        }
        double wall = middle.yMm() - lumen.centre().mm() / 2 * scale;
        double top = floor - needed.centre().mm() * scale;
        clearance(g, wall, top);
        labels(g, occupants, centre, scale, (wall + top) / 2);
        caption(g, scale);
    }

    private void lumen(PictureBuilder g, Figure figure, double scale) {
        g.group(Frame.named("lumen"), l -> {
            double outer = figure.high().mm() / 2 * scale;
            l.noPen().fill(DrawingInks.WALL).circle(middle.xMm(), middle.yMm(), outer + WALL_MM);
            l.fill(DrawingInks.TOLERANCE).circle(middle.xMm(), middle.yMm(), outer);
            l.fill(DrawingInks.LUMEN).circle(middle.xMm(), middle.yMm(), figure.low().mm() / 2 * scale);
            l.noFill().pen(DrawingInks.SHAFT_LINE, LINE_MM)
                    .circle(middle.xMm(), middle.yMm(), figure.centre().mm() / 2 * scale);
        });
    }

    private void members(PictureBuilder g, Occupants occupants, Point centre, double scale) {
        List<Member> shaft = occupants.members().stream().filter(m -> m.part() == Part.SHAFT).toList();
        g.group(Frame.named("shaft"), s -> {
            s.fill(DrawingInks.SHAFT).pen(DrawingInks.SHAFT_LINE, LINE_MM);
            if (occupants.oval()) {
                s.path(stadium(shaft.get(0), shaft.get(1), centre, scale));
            } else {
                shaft.forEach(m -> disc(s, m, centre, scale));
            }
        });
        occupants.members().stream().filter(m -> m.part() == Part.WIRE).forEach(m -> g.group(Frame.named("wire"),
                w -> disc(w.fill(DrawingInks.WIRE).pen(DrawingInks.WIRE_LINE, LINE_MM), m, centre, scale)));
    }

    private static void disc(PictureBuilder g, Member member, Point centre, double scale) {
        g.circle(centre.xMm() + member.centre().xMm() * scale, centre.yMm() + member.centre().yMm() * scale,
                member.radius() * scale);
    }

    private static Outline stadium(Member left, Member right, Point centre, double scale) {
        double y = centre.yMm() + left.centre().yMm() * scale;
        double x0 = centre.xMm() + left.centre().xMm() * scale;
        double x1 = centre.xMm() + right.centre().xMm() * scale;
        double r = left.radius() * scale;
        return Outline.from(x0, y + r).arc(x0, y, r, 90, 180).lineTo(x1, y - r).arc(x1, y, r, 270, 180).close();
    }

    /** The gap above what lies on the floor, or how far it sticks out. */
    private void clearance(PictureBuilder g, double wall, double top) {
        double x = middle.xMm();
        g.group(Frame.named("clearance"), c -> c.noFill().pen(DrawingInks.LIMIT, 0.45).line(x, wall, x, top)
                .line(x - 1.3, wall, x + 1.3, wall).line(x - 1.3, top, x + 1.3, top));
    }

    private void labels(PictureBuilder g, Occupants occupants, Point centre, double scale, double gapY) {
        List<SideLabel> labels = new ArrayList<>();
        labels.add(new SideLabel(clearanceWords(), new Point(middle.xMm(), gapY), DrawingInks.LIMIT));
        Figure lumen = answer.limiting().orElseThrow().lumenDiameter();
        double r = lumen.centre().mm() / 2 * scale;
        labels.add(new SideLabel(List.of(phrase("drawing.lumen", BandWords.range(words, lumen))),
                new Point(middle.xMm() + r * 0.87, middle.yMm() - r * 0.5), Ink.TEXT));
        part(occupants, Part.WIRE, centre, scale).ifPresent(at -> labels.add(new SideLabel(
                List.of(phrase("drawing.wire.size", BandWords.range(words, last(occupants).figure()))), at, Ink.TEXT)));
        part(occupants, Part.SHAFT, centre, scale).ifPresent(at -> labels.add(new SideLabel(
                List.of(shaftWords(occupants)), at, Ink.TEXT)));
        if (occupants.members().size() > 1) {
            Figure needed = answer.limiting().orElseThrow().deviceDiameter();
            double half = needed.centre().mm() / 2 * scale;
            labels.add(new SideLabel(List.of(phrase("drawing.together", BandWords.range(words, needed))),
                    new Point(centre.xMm() + half * 0.7, centre.yMm() + half * 0.714), Ink.TEXT));
        }
        new SideLabels(zones, square.rightMm() + 4).draw(g, labels, square);
    }

    private String shaftWords(Occupants occupants) {
        Figure figure = occupants.members().get(0).figure();
        String section = words.section(answer.limiting().orElseThrow().deviceSection());
        String size = occupants.oval() ? phrase("drawing.oval", words.lengths().device(figure.centre()))
                : BandWords.range(words, figure);
        return section + " " + size;
    }

    private static Member last(Occupants occupants) {
        return occupants.members().get(occupants.members().size() - 1);
    }

    /** A place in a part from which a leader can run to the right. */
    private static Optional<Point> part(Occupants occupants, Part part, Point centre, double scale) {
        return occupants.members().stream().filter(m -> m.part() == part).reduce((a, b) -> b)
                .map(m -> centre.plus((m.centre().xMm() + m.radius() * 0.5) * scale, m.centre().yMm() * scale));
    }

    private List<String> clearanceWords() {
        Clearance clearance = answer.clearance().orElseThrow();
        return List.of(phrase("drawing.clearance", words.lengths().clearance(clearance.worst())),
                words.phrases().fill("drawing.clearance.others", words.lengths().clearance(clearance.nominal()),
                        words.lengths().clearance(clearance.best())));
    }

    /** Broken circles for what is not known, and the reason in words. */
    void unknown(PictureBuilder g) {
        Optional<Figure> lumen = question.outer().bore(question.lumen()).stream().map(Stretch::diameter)
                .flatMap(Optional::stream).findFirst().map(taper -> taper.start());
        double scale = (square.widthMm() - 2 * WALL_MM) / lumen.map(f -> f.high().mm()).orElse(GUESS_MM);
        if (lumen.isPresent()) {
            lumen(g, lumen.get(), scale);
        }
        double r = lumen.map(f -> f.low().mm() * 0.55).orElse(GUESS_MM) / 2 * scale;
        g.group(Frame.named(lumen.isPresent() ? "shaft" : "lumen"), u -> u.noFill()
                .pen(Stroke.of(DrawingInks.SHAFT_LINE, LINE_MM).dashed(Dash.DASHED))
                .circle(middle.xMm(), middle.yMm(), r)
                .lettering(zones.titleStyle().sized(14)).textMiddle(middle.xMm(), middle.yMm() + 1.8, "?"));
        PairNames names = PairNames.of(question);
        String why = answer.reasons().stream().findFirst().map(r0 -> words.say(r0, answer, names))
                .orElse(phrase("drawing.notStated"));
        new SideLabels(zones, square.rightMm() + 4).words(g, why, square);
    }

    private void caption(PictureBuilder g, double scale) {
        String number = new BigDecimal(scale).round(new MathContext(2)).stripTrailingZeros().toPlainString();
        g.lettering(zones.smallStyle()).text(zones.left(), zones.height() - 1.6,
                TextLayout.standard().shorten(phrase("drawing.toScale", number), zones.smallStyle(),
                        zones.right() - zones.left()));
    }

    private String phrase(String key, String... values) {
        return words.phrases().fill(key, values);
    }
}
