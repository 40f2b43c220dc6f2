/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.List;

/**
 * A body that lies still along a drawing while another passes.
 *
 * @param id the name of its group, for hit-testing
 * @param name for people
 * @param bands from left to right
 * @param tip where its distal end lies
 */
record StillBody(String id, String name, List<Band> bands, double tip) {
    StillBody {
        bands = List.copyOf(bands);
    }

    /** This body as far as it lies between two places. */
    StillBody cut(double left, double right) {
        return new StillBody(id, name, bands.stream().filter(b -> b.overlaps(left, right))
                .map(b -> b.cut(left, right)).toList(), tip);
    }

    /** How thick it is at most, in mm; a little where nobody says. */
    double thickest() {
        return bands.stream().flatMap(b -> b.diameter().stream())
                .mapToDouble(t -> Math.max(t.start().high().mm(), t.end().high().mm())).max().orElse(0.3);
    }
}
