/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.ferrule.fit.passage.Bend.Where;
import org.ferrule.fit.passage.Bend;
import org.ferrule.model.Lesion;
import org.ferrule.model.VesselPath;
import org.ferrule.model.VesselSegment;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Reads the way through a vessel, from the ostium on. What cannot be read is told in words. */
public final class VesselWay {
    private final Consumer<String> problems;

    /** A reader that tells what it cannot read. */
    public VesselWay(Consumer<String> problems) {
        this.problems = problems;
    }

    /** How far the proximal end of a lesion lies from the ostium; absent where that is not known. */
    public Optional<Length> start(Lesion lesion) {
        return readable(lesion.getAt(), "the place of the lesion");
    }

    /** How far its distal end lies from the ostium; absent where that is not known. */
    public Optional<Length> end(Lesion lesion) {
        if (lesion.getAt() == null || lesion.getLength() == null) {
            problems.accept("the lesion has no place or no length, so the reach is not known");
            return Optional.empty();
        }
        Optional<Length> at = start(lesion);
        Optional<Length> length = readable(lesion.getLength(), "the length of the lesion");
        return at.flatMap(a -> length.map(a::plus));
    }

    /** The bends of a path that begin before the place that is asked for, or all where none is. */
    public List<Bend> bends(VesselPath path, Optional<Length> reach) {
        List<Bend> bends = new ArrayList<>();
        Optional<Length> start = Optional.of(Length.ZERO);
        for (VesselSegment segment : path.getSegments()) {
            boolean passed = start.isEmpty() || reach.isEmpty() || start.get().compareTo(reach.get()) < 0;
            boolean straight = segment.getBendAngleDegrees() != null && segment.getBendAngleDegrees().signum() == 0;
            if (passed && !straight && segment.getBendRadius() != null) {
                bend(segment).ifPresent(bends::add);
            }
            start = start.flatMap(s -> readable(segment.getLength()).map(s::plus));
        }
        return bends;
    }

    /** The diameter of the segment in which a place lies; absent where that is not known. */
    public static Optional<Length> diameterAt(VesselPath path, Length place) {
        Length end = Length.ZERO;
        for (VesselSegment segment : path.getSegments()) {
            Optional<Length> length = readable(segment.getLength());
            if (length.isEmpty()) {
                return Optional.empty();
            }
            end = end.plus(length.get());
            if (place.compareTo(end) < 0) {
                return readable(segment.getDiameter());
            }
        }
        return Optional.empty();
    }

    private Optional<Bend> bend(VesselSegment segment) {
        return bend(Where.VESSEL, segment.getBendRadius(), segment.getBendAngleDegrees(),
                width(segment.getDiameter()));
    }

    /** How wide a bent vessel is; absent where that is not known, and then it still bends. */
    public Optional<Length> width(Dimension printed) {
        return readable(printed, "the diameter of a bent vessel").filter(d -> d.compareTo(Length.ZERO) > 0);
    }

    /**
     * A bend; absent where nothing can be asked about it.
     *
     * @param vessel how wide the vessel is that is bent, where that is known
     */
    public Optional<Bend> bend(Where where, Dimension radius, BigDecimal angleDegrees, Optional<Length> vessel) {
        Optional<Length> read = readable(radius).filter(r -> r.compareTo(Length.ZERO) > 0);
        boolean turns = angleDegrees == null || angleDegrees.signum() > 0;
        if (read.isEmpty() || !turns) {
            problems.accept(radius == null ? "a bend has no radius"
                    : "a bend of " + radius.text() + angle(angleDegrees) + " cannot be asked about");
            return Optional.empty();
        }
        return Optional.of(new Bend(where, read.get(), Optional.ofNullable(angleDegrees), vessel));
    }

    private static String angle(BigDecimal degrees) {
        return degrees == null ? "" : " over " + degrees.toPlainString() + " degrees";
    }

    private Optional<Length> readable(Dimension printed, String what) {
        if (printed != null && !printed.readable()) {
            problems.accept(what + " cannot be read: \"" + printed.text() + "\"");
        }
        return readable(printed);
    }

    private static Optional<Length> readable(Dimension printed) {
        return Optional.ofNullable(printed).filter(Dimension::readable).map(Dimension::label);
    }
}
