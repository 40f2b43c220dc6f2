/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.Objects;

/**
 * The paper of a chart.
 *
 * @param size of the sheet
 * @param landscape whether it lies on its long side
 */
public record PaperFormat(Size size, boolean landscape) {

    /** Sheets: ISO 216 and ANSI Y14.1. */
    public enum Size {
        A4(210, 297), A3(297, 420), LETTER(215.9, 279.4), TABLOID(279.4, 431.8);

        private final double shortMm;
        private final double longMm;

        Size(double shortMm, double longMm) {
            this.shortMm = shortMm;
            this.longMm = longMm;
        }
    }

    public PaperFormat {
        Objects.requireNonNull(size, "size");
    }

    /** The width of the page. */
    public double widthMm() {
        return landscape ? size.longMm : size.shortMm;
    }

    /** The height of the page. */
    public double heightMm() {
        return landscape ? size.shortMm : size.longMm;
    }

    /** How much larger everything is set than on A4: sheets for the wall are read from farther away. */
    public double scale() {
        return size == Size.A3 || size == Size.TABLOID ? 1.25 : 1;
    }
}
