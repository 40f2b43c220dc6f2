/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.List;

import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Point;

/**
 * Words beside a drawing that belong to a place in it.
 *
 * @param lines of words
 * @param place to which the leader runs
 * @param ink of words and leader
 */
record SideLabel(List<String> lines, Point place, Ink ink) {
    SideLabel {
        lines = lines.stream().map(Printable::line).toList();
    }
}
