/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.io.IOException;
import java.io.OutputStream;
import org.ferrule.picture.FontFace;
import org.ferrule.picture.Picture;

/**
 * Writes a picture as an SVG file in UTF-8. The same picture always gives the same bytes.
 *
 * <p>The coordinates are millimetres. Text is written as text; fonts are not embedded, but every text carries the
 * width it was laid out with, so that it keeps its room where another font has to stand in. Tooltips become titles of
 * groups, and the names of groups the attribute {@code data-id}. The file holds no scripts and refers to nothing
 * outside itself.
 */
public final class SvgWriter {

    /**
     * Writes a picture. The stream is flushed and left open.
     *
     * @throws IOException if the stream fails
     */
    public void write(Picture picture, OutputStream out) throws IOException {
        XmlOutput xml = new XmlOutput(out);
        Definitions definitions = Definitions.of(picture);
        xml.begin("svg", rootAttributes(picture));
        writeTitle(picture, xml);
        definitions.write(xml);
        new SvgPainter(xml, definitions).paint(picture.elements());
        xml.end();
        xml.endDocument();
    }

    private static Attributes rootAttributes(Picture picture) {
        String width = Numbers.mm(picture.widthMm());
        String height = Numbers.mm(picture.heightMm());
        return new Attributes().add("xmlns", "http://www.w3.org/2000/svg").add("version", "1.1")
                .add("width", width + "mm").add("height", height + "mm").add("viewBox", "0 0 " + width + " " + height)
                .add("font-family", SvgFonts.families(FontFace.REGULAR));
    }

    private static void writeTitle(Picture picture, XmlOutput xml) throws IOException {
        if (!picture.title().isEmpty()) {
            xml.textElement("title", Attributes.NONE, picture.title());
        }
        if (!picture.description().isEmpty()) {
            xml.textElement("desc", Attributes.NONE, picture.description());
        }
    }
}
