/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads text letter by letter, whatever its direction. */
final class Letters extends PDFTextStripper {

    private final StringBuilder letters = new StringBuilder();

    private Letters() {
    }

    static String inOrderOfPainting(PDDocument pdf) throws IOException {
        Letters stripper = new Letters();
        stripper.getText(pdf);
        return stripper.letters.toString();
    }

    @Override
    protected void processTextPosition(TextPosition text) {
        letters.append(text.getUnicode());
    }
}
