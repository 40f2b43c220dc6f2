/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Objects;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.ReadDevice;

/**
 * An outer device of a matrix, by the lumen that is asked about.
 *
 * @param device the outer device
 * @param lumen one of its lumens
 */
public record MatrixLine(ReadDevice device, Lumen lumen) {

    public MatrixLine {
        Objects.requireNonNull(device, "device");
        if (!device.device().lumens().contains(lumen)) {
            throw new IllegalArgumentException(
                    "device \"" + device.device().id() + "\" has no lumen \"" + lumen.name() + "\"");
        }
    }
}
