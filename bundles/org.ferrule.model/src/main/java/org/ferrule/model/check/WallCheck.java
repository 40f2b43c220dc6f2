/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.model.Device;
import org.ferrule.model.Lumen;
import org.ferrule.model.LumenSection;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.model.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * A lumen is narrower than the shaft around it. Only printed figures are compared, and of tapers the ends that leave
 * the most room for the wall, so that what is told is certainly wrong.
 */
final class WallCheck implements DeviceCheck {

    private static final Comparator<Dimension> BY_FIGURE = Comparator.comparing(Dimension::label);

    @Override
    public void check(ResolvedDevice resolved, Examination examination) {
        for (Lumen lumen : resolved.device().getLumens()) {
            LumenPlace.of(resolved.device(), lumen).ifPresent(place -> LumenStretch
                    .all(lumen, Optional.of(place.length())).forEach(s -> check(resolved, place, s, examination)));
        }
    }

    private static void check(ResolvedDevice resolved, LumenPlace place, LumenStretch stretch,
            Examination examination) {
        Length distal = place.proximal().minus(stretch.to());
        Length proximal = place.proximal().minus(stretch.from());
        for (ShaftSection shaft : resolved.device().getSections()) {
            if (overlaps(shaft, distal, proximal, resolved.device())) {
                check(resolved, stretch.section(), shaft, examination);
            }
        }
    }

    private static void check(ResolvedDevice resolved, LumenSection inside, ShaftSection shaft,
            Examination examination) {
        Optional<Dimension> inner = readable(inside.getId(), inside.getIdDistal()).min(BY_FIGURE);
        Optional<Dimension> outer = outline(shaft).max(BY_FIGURE);
        if (inner.isPresent() && outer.isPresent() && !Lengths.isMore(outer.get(), inner.get())) {
            examination.add(ProblemCode.LUMEN_TOO_WIDE, resolved.statedBy(inside, Literals.LUMEN_SECTION__ID),
                    Literals.LUMEN_SECTION__ID, inner.get().text(), outer.get().text(),
                    String.valueOf(shaft.getName()));
        }
    }

    private static boolean overlaps(ShaftSection shaft, Length distal, Length proximal, Device device) {
        Optional<Length> from = Lengths.of(shaft.getFrom());
        Optional<Length> to = Lengths.of(shaft.getTo() == null ? device.getEffectiveLength() : shaft.getTo());
        return from.isPresent() && to.isPresent() && from.get().compareTo(proximal) < 0
                && distal.compareTo(to.get()) < 0;
    }

    /** A composed cross-section is left out: how far apart its discs lie is not a figure that can be compared. */
    private static Stream<Dimension> outline(ShaftSection shaft) {
        return shaft.getOval() == null ? readable(shaft.getOd(), shaft.getOdProximal())
                : readable(shaft.getOval().getWidth());
    }

    private static Stream<Dimension> readable(Dimension... dimensions) {
        return Stream.of(dimensions).filter(dimension -> dimension != null && dimension.readable());
    }
}
