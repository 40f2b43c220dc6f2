/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import org.ferrule.picture.FontFace;

/** The families by which a viewer finds a face: the one that text was laid out with first, then common ones. */
final class SvgFonts {

    private SvgFonts() {
    }

    static String families(FontFace face) {
        return face.isCondensed()
                ? "'DejaVu Sans Condensed', 'DejaVu Sans', 'Arial Narrow', Arial, sans-serif"
                : "'DejaVu Sans', 'Bitstream Vera Sans', Verdana, Arial, sans-serif";
    }
}
