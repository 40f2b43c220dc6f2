/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.content;

import java.util.stream.Collectors;

import org.ferrule.chart.page.Head;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.chart.AxisEntry;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** The heads of rows and columns: what a device is called, and its figure as printed. */
public final class Heads {
    private Heads() {
    }

    /** The head of an outer device: its lumen, with the smallest inner diameter as printed. */
    public static Head outer(AxisEntry entry, String group) {
        boolean only = entry.device().device().lumens().size() == 1;
        return new Head(entry.device().device().id(), entry.device().device().name(),
                entry.device().device().kind().word(), entry.device().device().size(),
                only ? "" : entry.lumen().name(), smallest(entry.lumen()), group);
    }

    /** The head of an inner device: the largest outer diameter as printed. */
    public static Head inner(CataloguedDevice device, String group) {
        return new Head(device.device().id(), device.device().name(), device.device().kind().word(),
                device.device().size(), "", largest(device), group);
    }

    private static String smallest(Lumen lumen) {
        return lumen.sections().stream().flatMap(s -> s.proximal().stream()).filter(Dimension::readable)
                .collect(Collectors.minBy((a, b) -> a.label().compareTo(b.label()))).map(Dimension::text).orElse("");
    }

    private static String largest(CataloguedDevice device) {
        return device.device().sections().stream().map(ShaftSection::distal).map(Heads::printed)
                .filter(p -> !p.text().isEmpty()).collect(Collectors.maxBy((a, b) -> a.size().compareTo(b.size())))
                .map(Printed::text).orElse("");
    }

    private record Printed(String text, Length size) {
        static final Printed NOTHING = new Printed("", Length.ZERO);
    }

    private static Printed printed(Contour contour) {
        if (contour instanceof Contour.Round round && round.diameter().filter(Dimension::readable).isPresent()) {
            Dimension diameter = round.diameter().get();
            return new Printed(diameter.text(), diameter.label());
        }
        if (contour instanceof Contour.Oval oval && oval.width().readable()) {
            return new Printed(oval.width().text() + " x " + oval.height().text(), oval.width().label());
        }
        return Printed.NOTHING;
    }
}
