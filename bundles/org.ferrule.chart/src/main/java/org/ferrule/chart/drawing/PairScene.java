/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.quantity.Length;

/**
 * A device in a lumen, hub to the left; stations count from the lumen's proximal entry. The device lies on the floor of
 * the lumen, so that all the clearance shows above it.
 */
final class PairScene {
    private static final double ROOM_FOR_WIRE_MM = 5;
    private static final double OUTSIDE_SHARE = 0.12;

    private final FitQuestion question;
    private final PhaseAnswer answer;
    private final ReasonWords words;
    private final Zones zones;
    private final Placement placement;
    private final StillBodies still;
    private final List<Band> guide;
    private final List<Band> bore;
    private final List<Band> shaft;
    private final Optional<OwnWirePath> wire;
    private final AxialScale axis;
    private final BodyPainter painter;
    private final double centreY;
    private final Rest floor;
    private final StillPainter stillPainter;
    private final double widest;
    private final double thickest;

    PairScene(FitQuestion question, PhaseAnswer answer, Phase phase, ReasonWords words, Zones zones) {
        this.question = question;
        this.answer = answer;
        this.words = words;
        this.zones = zones;
        this.placement = Placement.of(question, answer, phase);
        this.still = new StillBodies(question, phase, words);
        this.guide = Band.ofBore(question.outer().bore(question.lumen()));
        this.bore = Stream.concat(guide.stream(), still.tubeBore().stream()).toList();
        List<Band> whole = Band.ofShaft(question.inner(), question.rules(), phase, placement.tip());
        double left = leftEnd(whole);
        this.shaft = whole.stream().filter(b -> b.overlaps(left, placement.tip()))
                .map(b -> b.cut(left, placement.tip())).toList();
        this.wire = OwnWirePath.of(question.inner(), placement.tip()).filter(w -> w.port() > left);
        Box body = zones.body(true);
        this.axis = AxialScale.of(stations(left), body.xMm(), body.rightMm() - ROOM_FOR_WIRE_MM);
        this.widest = DoubleStream.concat(diameters(bore), still.tube().stream().mapToDouble(StillBody::thickest))
                .max().orElse(thickest(shaft));
        this.thickest = thickest(shaft);
        double narrowest = bore.stream().flatMap(b -> b.diameter().stream()).mapToDouble(t -> Math.min(
                t.start().low().mm(), t.end().low().mm())).min().orElse(widest);
        double below = widest / 2;
        double above = Math.max(widest / 2, thickest + beside() - narrowest / 2);
        double room = Math.max(1, body.heightMm() - 2 * BodyPainter.WALL_MM);
        this.painter = new BodyPainter(axis, room / (below + above), zones.lettering());
        this.centreY = body.yMm() + BodyPainter.WALL_MM + above * painter.radial();
        this.floor = Rest.onFloor(centreY + narrowest / 2 * painter.radial());
        this.stillPainter = new StillPainter(still, axis, painter, centreY,
                centreY - narrowest / 2 * painter.radial(), floor);
    }

    private double beside() {
        return wire.map(OwnWirePath::room).orElse(0.0);
    }

    private static double thickest(List<Band> bands) {
        return diameters(bands).max().orElse(1);
    }

    private static DoubleStream diameters(List<Band> bands) {
        return bands.stream().flatMap(b -> b.diameter().stream())
                .flatMap(t -> Stream.of(t.start(), t.end())).mapToDouble(f -> f.high().mm());
    }

    /** How much of a device that is not all the way in is shown: the stretch that decides and some more. */
    private double leftEnd(List<Band> whole) {
        double hub = whole.isEmpty() ? 0 : whole.get(0).from();
        double some = OUTSIDE_SHARE * Math.max(question.lumen().length().mm(), placement.tip());
        double decides = answer.limiting().map(l -> placement.tip() - l.deviceStation().mm()).orElse(0.0);
        return Math.max(hub, Math.min(0, decides) - some);
    }

    private TreeSet<Double> stations(double left) {
        TreeSet<Double> stations = new TreeSet<>(List.of(Math.min(0, left), question.lumen().length().mm()));
        stations.add(0.0);
        stations.add(Math.max(placement.tip(), 1));
        bore.forEach(b -> stations.addAll(List.of(b.from(), b.to())));
        shaft.forEach(b -> stations.addAll(List.of(b.from(), b.to())));
        placement.limit().ifPresent(stations::add);
        wire.ifPresent(w -> stations.add(w.port()));
        still.stations().filter(station -> station > Math.min(0, left)).forEach(stations::add);
        return stations;
    }

    void draw(PictureBuilder g) {
        Box body = zones.body(true);
        guide.forEach(band -> paintBore(g, band));
        stillPainter.tube(g, words);
        stillPainter.beside(g);
        shaft.forEach(band -> paintShaft(g, band));
        wire.ifPresent(w -> w.paint(g, axis, painter, shaft, floor,
                List.of(new OwnWirePath.Level(w.port(), insideY())), placement.tip()));
        painter.gaps(g, body.yMm() - 0.6, body.bottomMm() + 0.6);
        placement.limit().ifPresent(place -> limit(g, place));
        new LabelRows(zones.lettering(), zones.left(), zones.right(), zones.labelRows()).draw(g, shaftLabels(),
                zones.labelsEdge(), true);
        new LabelRows(zones.lettering(), zones.left(), zones.right(), 1).draw(g, boreLabels(),
                zones.lowerLabelsEdge(true), false);
        new Ruler(axis, zones).draw(g, borders(), 0, axis.to(), zones.rulerY());
        new Caption(words.phrases(), painter.radial(), axis).with("drawing.fromEntry", true)
                .with("drawing.still", stillPainter.hasBeside())
                .with("drawing.rigid", shaft.stream().anyMatch(Band::rigid)).with("drawing.tolerance", true)
                .draw(g, zones);
    }

    private void paintBore(PictureBuilder g, Band band) {
        String tooltip = words.bore(band.name()) + ", " + BandWords.range(words, band);
        if (band.diameter().isPresent()) {
            painter.lumen(g, band, centreY, tooltip);
        } else {
            painter.unknown(g, band, Rest.centred(centreY), widest, "lumen", tooltip);
        }
    }

    private void paintShaft(PictureBuilder g, Band band) {
        String tooltip = words.section(band.name()) + ", " + BandWords.range(words, band);
        if (band.diameter().isPresent()) {
            painter.shaft(g, band, floor, tooltip);
        } else {
            painter.unknown(g, band, floor, 0.7 * thickest, "section", tooltip);
        }
    }

    /** The wire leaves the shaft in the middle of its tip. */
    private double insideY() {
        double tip = shaft.isEmpty() ? 0
                : shaft.get(shaft.size() - 1).figureAt(placement.tip()).map(f -> f.centre().mm()).orElse(0.4);
        return floor.top(tip * painter.radial() / 2);
    }

    private void limit(PictureBuilder g, double place) {
        double x = axis.x(place);
        Figure lumen = answer.limiting().orElseThrow().lumenDiameter();
        Figure device = answer.limiting().orElseThrow().deviceDiameter();
        double wall = centreY - lumen.centre().mm() / 2 * painter.radial();
        double top = floor.top(device.centre().mm() * painter.radial());
        g.group(Frame.named("limiting"), m -> {
            m.pen(DrawingInks.LIMIT, 0.45).line(x, Math.min(wall, top), x, Math.max(wall, top));
            m.line(x - 1.2, wall, x + 1.2, wall).line(x - 1.2, top, x + 1.2, top);
            m.noPen().fill(DrawingInks.LIMIT).polygon(new Point(x, Math.min(wall, top) - 0.2),
                    new Point(x - 1.1, Math.min(wall, top) - 2), new Point(x + 1.1, Math.min(wall, top) - 2));
        });
    }

    private List<Label> shaftLabels() {
        List<Label> labels = new ArrayList<>();
        for (Band band : shaft) {
            String name = words.section(band.name());
            labels.add(new Label(name + " " + BandWords.diameter(words, band), name, middleX(band),
                    floor.top(heightOf(band)) + 0.4, Ink.TEXT));
        }
        labels.addAll(stillPainter.labels());
        placement.limit().ifPresent(place -> labels.add(limitLabel(place)));
        return labels;
    }

    private Label limitLabel(double place) {
        Length worst = answer.clearance().orElseThrow().worst();
        String text = worst.isNegative()
                ? words.phrases().fill("drawing.overlaps", words.lengths().overlap(worst))
                : words.phrases().fill("drawing.worst", words.lengths().clearance(worst));
        double wall = centreY - answer.limiting().orElseThrow().lumenDiameter().centre().mm() / 2 * painter.radial();
        double top = floor.top(answer.limiting().orElseThrow().deviceDiameter().centre().mm() * painter.radial());
        return new Label(text, text, axis.x(place), Math.min(wall, top) - 2, DrawingInks.LIMIT);
    }

    private List<Label> boreLabels() {
        List<Label> labels = new ArrayList<>();
        double y = centreY + widest / 2 * painter.radial() + BodyPainter.WALL_MM;
        for (Band band : bore) {
            String name = words.bore(band.name());
            String diameter = band.figureAt(band.from()).map(f -> words.lengths().lumen(f.centre()))
                    .orElse(words.phrases().get("drawing.notStated"));
            labels.add(new Label(name + " " + diameter, name, middleX(band), y, Ink.TEXT));
        }
        Optional<Double> collarAt = question.lumen().opening() == Lumen.Opening.COLLAR ? Optional.of(0.0)
                : still.collar();
        collarAt.ifPresent(place -> {
            String collar = words.phrases().get("drawing.collar");
            labels.add(new Label(collar, collar, axis.x(place), y, DrawingInks.LIMIT));
        });
        return labels;
    }

    private double middleX(Band band) {
        return (axis.x(band.from()) + axis.x(band.to())) / 2;
    }

    private double heightOf(Band band) {
        return band.figureAt(band.middle()).map(f -> f.centre().mm()).orElse(0.7 * thickest) * painter.radial();
    }

    private TreeSet<Double> borders() {
        TreeSet<Double> borders = new TreeSet<>(List.of(0.0, question.lumen().length().mm()));
        bore.forEach(b -> borders.addAll(List.of(b.from(), b.to())));
        placement.limit().ifPresent(borders::add);
        borders.add(placement.tip());
        return borders;
    }
}
