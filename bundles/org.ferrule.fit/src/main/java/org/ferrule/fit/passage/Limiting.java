/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * The place that decides a verdict.
 *
 * @param lumenSection name of the lumen's section
 * @param lumenStation from the lumen's proximal entry
 * @param lumenDiameter there
 * @param lumenSource where that figure was read
 * @param deviceSection name of the inner device's section
 * @param deviceStation from the inner device's distal tip
 * @param deviceDiameter there, own wire included
 * @param deviceSource where that figure was read
 */
public record Limiting(String lumenSection, Length lumenStation, Figure lumenDiameter, SourceRef lumenSource,
        String deviceSection, Length deviceStation, Figure deviceDiameter, SourceRef deviceSource) {
}
