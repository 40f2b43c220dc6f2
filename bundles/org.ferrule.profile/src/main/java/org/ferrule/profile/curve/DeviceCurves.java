/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Parts.MarkerPart;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;

/**
 * All curves and marks of one device before use, from a landmark.
 *
 * @param outer the shaft alone; without pieces when nothing is known of it
 * @param withWire shaft and own wire, where the wire lies beside the shaft; absent when it does so nowhere
 * @param inner its lumens, in the order of its papers
 * @param marks exit ports, markers, rigid parts, from distal to proximal
 */
public record DeviceCurves(Curve outer, Optional<Curve> withWire, List<Curve> inner, List<Mark> marks) {

    public DeviceCurves {
        Objects.requireNonNull(outer, "outer");
        Objects.requireNonNull(withWire, "withWire");
        inner = List.copyOf(inner);
        marks = List.copyOf(marks);
    }

    /**
     * The curves of a device.
     *
     * @param landmark the station, from its distal tip, from which they count
     */
    public static DeviceCurves of(ReadDevice read, Length landmark) {
        Curve outer = new Curve(Curve.Kind.OUTER, "", pieces(read.shaft(Phase.IN), landmark));
        List<Piece> beside = pieces(read.outline(Phase.IN).stream().filter(DeviceCurves::hasWireBeside).toList(),
                landmark);
        Optional<Curve> withWire = beside.isEmpty() ? Optional.empty()
                : Optional.of(new Curve(Curve.Kind.WITH_WIRE, "", beside));
        List<Curve> inner = read.device().lumens().stream().filter(lumen -> lumen.length().compareTo(Length.ZERO) > 0)
                .map(lumen -> inner(read, lumen, landmark)).toList();
        return new DeviceCurves(outer, withWire, inner, marks(read.device(), landmark));
    }

    private static boolean hasWireBeside(Stretch stretch) {
        boolean known = stretch.shape().isPresent() && stretch.shape().get().wire().isPresent();
        boolean unknown = stretch.notes().stream().anyMatch(note -> note.code() == ReasonCode.OWN_WIRE_NOT_STATED
                || note.code() == ReasonCode.PORT_NOT_STATED);
        return known || unknown;
    }

    private static List<Piece> pieces(List<Stretch> stretches, Length landmark) {
        return stretches.stream().map(stretch -> Piece.of(stretch, landmark)).toList();
    }

    private static Curve inner(ReadDevice read, Lumen lumen, Length landmark) {
        List<Stretch> fromDistal = Stretch.reversed(read.bore(lumen), lumen.length());
        List<Piece> pieces = new ArrayList<>(pieces(fromDistal, landmark.minus(lumen.distalAt())));
        pieces.sort(Comparator.comparing(Piece::from));
        return new Curve(Curve.Kind.INNER, lumen.name(), pieces);
    }

    private static List<Mark> marks(Device device, Length landmark) {
        Stream<Mark> ports = device.lumens().stream().filter(Lumen::leavesShaft).filter(Lumen::proximalStated)
                .map(lumen -> port(lumen, lumen.proximalAt().minus(landmark)));
        Stream<Mark> rigid = device.sections().stream().filter(ShaftSection::rigid).map(section -> new Mark(
                Mark.Kind.RIGID, section.name(), section.from().minus(landmark), section.to().minus(landmark)));
        return Stream.of(ports, rigid, markers(device, landmark).stream()).flatMap(marks -> marks)
                .sorted(Comparator.comparing(Mark::from)).toList();
    }

    private static Mark port(Lumen lumen, Length station) {
        Mark.Kind kind = lumen.opening() == Lumen.Opening.COLLAR ? Mark.Kind.COLLAR : Mark.Kind.EXIT_PORT;
        return new Mark(kind, lumen.name(), station, station);
    }

    private static List<Mark> markers(Device device, Length landmark) {
        List<MarkerPart> markers = device.parts().markers().stream().sorted(Comparator.comparing(MarkerPart::station))
                .toList();
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < markers.size(); i++) {
            Length from = markers.get(i).station().minus(landmark);
            marks.add(new Mark(Mark.Kind.MARKER, Integer.toString(i + 1), from,
                    from.plus(markers.get(i).length().orElse(Length.ZERO))));
        }
        return marks;
    }

    /** All curves: the shaft, what is needed with the wire, the lumens. */
    public List<Curve> all() {
        return Stream.of(Stream.of(outer), withWire.stream(), inner.stream()).flatMap(curves -> curves).toList();
    }
}
