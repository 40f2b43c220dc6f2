/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.model.Axis;
import org.ferrule.model.Grouping;
import org.ferrule.model.Sorting;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Groups and sorts the devices of one axis as its settings say; what is not known comes last. */
public final class AxisOrder {
    private static final Length LAST = new Length(Long.MAX_VALUE);
    private final NaturalOrder natural = new NaturalOrder();
    private final Grouping grouping;
    private final Sorting sorting;

    /** The order that an axis asks for. */
    public AxisOrder(Axis axis) {
        this.grouping = axis.getGroupBy();
        this.sorting = axis.getSortBy();
    }

    /** The name of the group that a device belongs to; empty when nothing is grouped. */
    public String group(CataloguedDevice device) {
        return switch (grouping) {
            case SIZE -> device.device().size();
            case KIND -> device.device().kind().word();
            case MAKER -> device.maker();
            case LINE -> device.line();
            case NONE -> "";
        };
    }

    /** The entries in order. */
    <E> List<E> sorted(List<E> entries, Function<E, CataloguedDevice> device, Function<E, Length> lumen) {
        Comparator<E> byKind = Comparator.comparing(e -> kindOrder(device.apply(e)));
        Comparator<E> byGroup = byKind.thenComparing(e -> group(device.apply(e)), natural);
        return entries.stream().sorted(byGroup.thenComparing(within(device, lumen))).toList();
    }

    private int kindOrder(CataloguedDevice device) {
        return grouping == Grouping.KIND ? device.device().kind().ordinal() : 0;
    }

    private <E> Comparator<E> within(Function<E, CataloguedDevice> device, Function<E, Length> lumen) {
        return switch (sorting) {
            case LUMEN -> Comparator.comparing(lumen);
            case PROFILE -> Comparator.comparing(e -> profile(device.apply(e)));
            case NAME -> Comparator.comparing(e -> device.apply(e).device().name(), natural);
            case AS_LISTED -> (a, b) -> 0;
        };
    }

    /** The smallest printed inner diameter of a lumen. */
    static Length lumen(Lumen lumen) {
        return lumen.sections().stream().map(LumenSection::proximal).map(d -> d.filter(Dimension::readable)
                .map(Dimension::label).orElse(LAST)).reduce(Length::min).orElse(LAST);
    }

    /** The largest printed outer diameter of a shaft. */
    static Length profile(CataloguedDevice device) {
        return device.device().sections().stream().map(AxisOrder::profile).reduce(Length::max).orElse(LAST);
    }

    private static Length profile(ShaftSection section) {
        if (section.distal() instanceof Contour.Round round) {
            return round.diameter().filter(Dimension::readable).map(Dimension::label).orElse(LAST);
        }
        return section.distal() instanceof Contour.Oval oval && oval.width().readable() ? oval.width().label() : LAST;
    }
}
