/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;

/** A device by itself, hub to the left, distal tip to the right; stations count from the tip. */
final class DeviceScene {
    private static final double ROOM_FOR_WIRE_MM = 5;
    private static final double THIN_MARKER_MM = 0.7;
    private static final double UNKNOWN_LENGTH_MM = 10;

    private final ReadDevice device;
    private final List<MarkerBand> markers;
    private final ReasonWords words;
    private final Zones zones;
    private final List<Band> shaft;
    private final InnerOutlines inner;
    private final Optional<OwnWirePath> wire;
    private final AxialScale axis;
    private final BodyPainter painter;
    private final double centreY;
    private final double guess;

    DeviceScene(ReadDevice device, RuleSet rules, List<MarkerBand> markers, ReasonWords words, Zones zones) {
        this.device = device;
        this.markers = markers;
        this.words = words;
        this.zones = zones;
        this.shaft = Band.ofShaft(device, rules, Phase.IN, 0);
        this.inner = new InnerOutlines(device);
        this.wire = OwnWirePath.of(device, 0);
        Box body = zones.body(false);
        this.axis = AxialScale.of(stations(), body.xMm(), body.rightMm() - ROOM_FOR_WIRE_MM);
        double thickest = shaft.stream().flatMap(b -> b.diameter().stream())
                .mapToDouble(t -> Math.max(t.start().high().mm(), t.end().high().mm())).max().orElse(1);
        double beside = wire.map(OwnWirePath::room).orElse(0.0);
        this.painter = new BodyPainter(axis, body.heightMm() / (thickest + beside), zones.lettering());
        this.centreY = body.yMm() + (beside + thickest / 2) * painter.radial();
        this.guess = 0.7 * thickest;
    }

    private TreeSet<Double> stations() {
        TreeSet<Double> stations = new TreeSet<>(List.of(0.0));
        shaft.forEach(b -> stations.addAll(List.of(b.from(), b.to())));
        device.device().lumens().forEach(l -> stations.add(-l.distalAt().mm()));
        device.device().lumens().stream().filter(Lumen::leavesShaft).forEach(l -> stations.add(-l.proximalAt().mm()));
        if (stations.first() == 0) { // nothing is known of its length
            stations.add(-UNKNOWN_LENGTH_MM);
        }
        return stations;
    }

    void draw(PictureBuilder g) {
        Rest rest = Rest.centred(centreY);
        for (Band band : shaft) {
            paint(g, band, rest);
        }
        bores(g);
        inner.paint(g, axis, centreY, painter.radial());
        wire.ifPresent(w -> w.paint(g, axis, painter, shaft, rest, wireLevels(), 0));
        for (int i = 0; i < markers.size(); i++) {
            marker(g, markers.get(i), i);
        }
        Box body = zones.body(false);
        painter.gaps(g, body.yMm() - 0.6, body.bottomMm() + 0.6);
        ports(g);
        new LabelRows(zones.lettering(), zones.left(), zones.right(), zones.labelRows())
                .draw(g, labels(), zones.labelsEdge(), true);
        new Ruler(axis, zones).draw(g, stations(), axis.from(), 0, zones.rulerY());
        inner.explain(new Caption(words.phrases(), painter.radial(), axis).with("drawing.fromTip", true))
                .with("drawing.rigid", shaft.stream().anyMatch(Band::rigid)).with("drawing.tolerance", true)
                .draw(g, zones);
    }

    AxialScale axis() {
        return axis;
    }

    double radial() {
        return painter.radial();
    }

    double centreY() {
        return centreY;
    }

    OptionalDouble lumenY(String name, double place) {
        return knownLumens().stream().filter(lumen -> lumen.name().equals(name))
                .filter(l -> -l.proximalAt().mm() <= place && -l.distalAt().mm() >= place)
                .mapToDouble(lumen -> middleOf(lumen, place)).findFirst();
    }

    OptionalDouble discMm(String section, int disc) {
        return inner.discMm(section, disc);
    }

    /** Its sections from the tip, one a line. */
    String description() {
        List<String> lines = new ArrayList<>();
        shaft.forEach(band -> lines.add(0, Printable.line(BandWords.tooltip(words, band))));
        return String.join("\n", lines);
    }

    private void paint(PictureBuilder g, Band band, Rest rest) {
        String tooltip = BandWords.tooltip(words, band);
        if (band.diameter().isPresent()) {
            painter.shaft(g, band, rest, tooltip);
        } else {
            painter.unknown(g, band, rest, guess, "section", tooltip);
        }
    }

    /**
     * Lumens of known diameter, side by side where there are several, else in the middle: where they lie in the shaft
     * is not stated.
     */
    private void bores(PictureBuilder g) {
        for (Lumen lumen : knownLumens()) {
            double entry = -lumen.proximalAt().mm();
            for (Stretch stretch : device.bore(lumen)) {
                Band whole = new Band(stretch.name(), entry + stretch.from().mm(), entry + stretch.to().mm(),
                        stretch.diameter(), false);
                pieces(whole.from(), whole.to()).forEach(piece -> painter.bore(g, whole.cut(piece[0], piece[1]),
                        middleOf(lumen, (piece[0] + piece[1]) / 2), "lumen:" + Printable.line(lumen.name())));
            }
        }
    }

    /** A stretch cut where any lumen begins or ends. */
    private List<double[]> pieces(double from, double to) {
        TreeSet<Double> cuts = new TreeSet<>(List.of(from, to));
        knownLumens().forEach(l -> cuts.addAll(List.of(-l.proximalAt().mm(), -l.distalAt().mm())));
        List<Double> inside = List.copyOf(cuts.subSet(from, true, to, true));
        List<double[]> pieces = new ArrayList<>();
        for (int i = 1; i < inside.size(); i++) {
            pieces.add(new double[] { inside.get(i - 1), inside.get(i) });
        }
        return pieces;
    }

    private List<Lumen> knownLumens() {
        return device.device().lumens().stream().filter(l -> largest(l) > 0
                && device.bore(l).stream().allMatch(s -> s.diameter().isPresent())).toList();
    }

    private double middleOf(Lumen wanted, double place) {
        List<Lumen> here = knownLumens().stream()
                .filter(l -> -l.proximalAt().mm() < place && -l.distalAt().mm() > place).toList();
        double y = centreY - here.stream().mapToDouble(this::largest).sum() / 2 * painter.radial();
        for (Lumen lumen : here) {
            double height = largest(lumen) * painter.radial();
            if (lumen.equals(wanted)) {
                return y + height / 2;
            }
            y += height;
        }
        return centreY;
    }

    private List<OwnWirePath.Level> wireLevels() {
        Lumen lumen = device.device().wireLumen().orElseThrow();
        List<OwnWirePath.Level> levels = new ArrayList<>();
        for (double[] piece : pieces(-lumen.proximalAt().mm(), -lumen.distalAt().mm())) {
            levels.add(0, new OwnWirePath.Level(piece[0], middleOf(lumen, (piece[0] + piece[1]) / 2)));
        }
        return levels;
    }

    private double largest(Lumen lumen) {
        return device.bore(lumen).stream().flatMap(s -> s.diameter().stream())
                .mapToDouble(t -> Math.max(t.start().centre().mm(), t.end().centre().mm())).max().orElse(0);
    }

    private void marker(PictureBuilder g, MarkerBand marker, int index) {
        double x = axis.x(-marker.at().mm());
        double width = Math.max(THIN_MARKER_MM, marker.width().mm() * axis.mmPerMm());
        double height = heightAt(-marker.at().mm());
        g.group(Frame.named("marker:" + index), m -> m.noPen().fill(Ink.TEXT)
                .rect(x - width / 2, centreY - height / 2, width, height));
    }

    private void ports(PictureBuilder g) {
        device.device().lumens().stream().filter(Lumen::leavesShaft).forEach(lumen -> {
            double x = axis.x(-lumen.proximalAt().mm());
            double y = centreY - heightAt(-lumen.proximalAt().mm()) / 2;
            g.group(Frame.named("port"), p -> p.noPen().fill(DrawingInks.LIMIT)
                    .polygon(new Point(x, y), new Point(x - 1, y - 1.6), new Point(x + 1, y - 1.6)));
        });
    }

    private double heightAt(double place) {
        return shaft.stream().filter(b -> b.from() <= place && b.to() >= place).flatMap(b -> b.figureAt(place).stream())
                .mapToDouble(f -> f.centre().mm()).max().orElse(guess) * painter.radial();
    }

    private List<Label> labels() {
        List<Label> labels = new ArrayList<>();
        for (Band band : shaft) {
            String name = words.section(band.name());
            double x = (axis.x(band.from()) + axis.x(band.to())) / 2;
            labels.add(new Label(name + " " + inner.measures(words, band), name, x,
                    centreY - heightAt(band.middle()) / 2 + 0.4, Ink.TEXT));
        }
        device.device().lumens().stream().filter(Lumen::leavesShaft)
                .forEach(l -> labels.add(portLabel(-l.proximalAt().mm(), l.opening())));
        return labels;
    }

    private Label portLabel(double place, Lumen.Opening opening) {
        String text = words.phrases().get(opening == Lumen.Opening.COLLAR ? "drawing.collar" : "drawing.port");
        return new Label(text, text, axis.x(place), centreY - heightAt(place) / 2 - 1.6, DrawingInks.LIMIT);
    }
}
