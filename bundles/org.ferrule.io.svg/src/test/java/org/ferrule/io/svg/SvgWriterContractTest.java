/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.io.IOException;
import java.io.OutputStream;
import java.util.stream.Collectors;
import org.ferrule.picture.Picture;
import org.ferrule.picture.contract.PictureWriterContract;
import org.w3c.dom.Element;

class SvgWriterContractTest extends PictureWriterContract {

    @Override
    protected void write(Picture picture, OutputStream out) throws IOException {
        new SvgWriter().write(picture, out);
    }

    @Override
    protected String letters(byte[] written) throws Exception {
        return ParsedSvg.of(written).all("text").stream().map(Element::getTextContent).collect(Collectors.joining());
    }

    @Override
    protected double[] paperMm(byte[] written) throws Exception {
        Element root = ParsedSvg.of(written).root();
        return new double[] { mm(root.getAttribute("width")), mm(root.getAttribute("height")) };
    }

    @Override
    protected String title(byte[] written) throws Exception {
        return ParsedSvg.of(written).all("title").get(0).getTextContent();
    }

    private static double mm(String length) {
        return Double.parseDouble(length.replaceFirst("mm$", ""));
    }
}
