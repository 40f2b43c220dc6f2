/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.Objects;

import org.ferrule.fit.device.Device;

/**
 * How the two devices of a pair are called.
 *
 * @param outerId id of the device around
 * @param outerName its name for people
 * @param innerId id of the device inside
 * @param innerName its name for people
 */
public record PairNames(String outerId, String outerName, String innerId, String innerName) {

    public PairNames {
        Objects.requireNonNull(outerId, "outerId");
        Objects.requireNonNull(outerName, "outerName");
        Objects.requireNonNull(innerId, "innerId");
        Objects.requireNonNull(innerName, "innerName");
    }

    /** The names of two devices. */
    public static PairNames of(Device outer, Device inner) {
        return new PairNames(outer.id(), outer.name(), inner.id(), inner.name());
    }

    /** The name of the device with that id; the id itself where there is no name. */
    String nameOf(String id) {
        String name = id.equals(innerId) ? innerName : id.equals(outerId) ? outerName : id;
        return name.isEmpty() ? id : name;
    }
}
