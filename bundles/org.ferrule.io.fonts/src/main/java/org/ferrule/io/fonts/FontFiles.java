/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.fonts;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;

import org.ferrule.picture.FontFace;

/** The TrueType file of each face. */
public final class FontFiles {

    private FontFiles() {
    }

    /** The name of a face, for people. */
    public static String name(FontFace face) {
        return "DejaVu Sans" + (face.isCondensed() ? " Condensed" : "") + (face.isBold() ? " Bold" : "");
    }

    /**
     * Opens the file of a face.
     *
     * @return a stream that the caller closes
     * @throws IOException if the file is not in this module
     */
    public static InputStream open(FontFace face) throws IOException {
        String resource = "dejavu/DejaVuSans" + (face.isCondensed() ? "Condensed" : "")
                + (face.isBold() ? "-Bold" : "") + ".ttf";
        InputStream in = FontFiles.class.getResourceAsStream(resource);
        if (in == null) {
            throw new FileNotFoundException("The font " + resource + " is not in this module");
        }
        return in;
    }
}
