/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.png;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageInputStream;

import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A PNG file, read back. */
record DecodedPng(BufferedImage image, IIOMetadataNode metadata) {

    static DecodedPng of(byte[] bytes) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in);
            IIOImage read = reader.readAll(0, null);
            return new DecodedPng((BufferedImage) read.getRenderedImage(), (IIOMetadataNode) read.getMetadata()
                    .getAsTree(IIOMetadataFormatImpl.standardMetadataFormatName));
        } finally {
            reader.dispose();
        }
    }

    String text(String keyword) {
        NodeList entries = metadata.getElementsByTagName("TextEntry");
        for (int i = 0; i < entries.getLength(); i++) {
            Element entry = (Element) entries.item(i);
            if (entry.getAttribute("keyword").equals(keyword)) {
                return entry.getAttribute("value");
            }
        }
        throw new AssertionError("no text " + keyword);
    }

    /** Pixels to the metre, as the chunk pHYs of the PNG specification states them (11.3.4.3). */
    static int pixelsPerMetre(byte[] file) {
        int at = new String(file, StandardCharsets.ISO_8859_1).indexOf("pHYs") + 4;
        ByteBuffer chunk = ByteBuffer.wrap(file, at, 9);
        int across = chunk.getInt();
        int down = chunk.getInt();
        if (across != down || chunk.get() != 1) {
            throw new AssertionError("not square metres: " + across + " " + down);
        }
        return across;
    }
}
