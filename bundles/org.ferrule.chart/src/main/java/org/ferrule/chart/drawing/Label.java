/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Ink;

/**
 * Words that belong to a place of a drawing.
 *
 * @param full the words
 * @param brief fewer words, where there is not enough room
 * @param xMm of the place
 * @param yMm of the place
 * @param ink of words and leader
 */
record Label(String full, String brief, double xMm, double yMm, Ink ink) {
    Label {
        full = Printable.line(full);
        brief = Printable.line(brief);
    }
}
