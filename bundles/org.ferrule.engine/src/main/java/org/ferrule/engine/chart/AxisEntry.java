/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.fit.device.Lumen;

/**
 * A line of a chart: an outer device by one of its lumens.
 *
 * @param device the device
 * @param lumen one of its lumens
 */
public record AxisEntry(CataloguedDevice device, Lumen lumen) {

    /** By which it is known again after its figures were edited: {@code library!id#lumen}. */
    public String key() {
        return device.key() + "#" + lumen.name();
    }
}
