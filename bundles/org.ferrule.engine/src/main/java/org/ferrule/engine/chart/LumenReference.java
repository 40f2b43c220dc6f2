/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.Optional;
import java.util.stream.Collectors;

import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Direction;

/**
 * A reference to a lumen: {@code id} for the one that is usually meant, {@code id#lumen} for a named one.
 *
 * @param device the reference of the device
 * @param lumen the name of the lumen, when one is given
 */
public record LumenReference(String device, Optional<String> lumen) {

    /** Splits a reference. */
    public static LumenReference parse(String reference) {
        int mark = reference.indexOf('#');
        return mark < 0 ? new LumenReference(reference, Optional.empty())
                : new LumenReference(reference.substring(0, mark), Optional.of(reference.substring(mark + 1)));
    }

    /**
     * The lumen meant: the named one, or the one that is entered in that direction.
     *
     * @throws ReferenceException when the device has none such
     */
    public Lumen lumen(Device found, Direction direction) {
        Optional<Lumen> meant = lumen.isPresent()
                ? found.lumens().stream().filter(l -> l.name().equals(lumen.get())).findFirst()
                : direction == Direction.OVER_WIRE_TAIL ? found.wireLumen() : found.mainLumen();
        return meant.orElseThrow(() -> new ReferenceException(missing(found)));
    }

    private String missing(Device found) {
        String known = found.lumens().stream().map(Lumen::name).collect(Collectors.joining(", "));
        String which = lumen.map(name -> " called \"" + name + "\"").orElse(" that a device could enter");
        return "device \"" + found.id() + "\" has no lumen" + which
                + (known.isEmpty() ? "" : "; its lumens are " + known);
    }
}
