/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.png;

import java.time.format.DateTimeFormatter;

import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import javax.imageio.metadata.IIOMetadataNode;

import org.ferrule.picture.DocumentInfo;

/** What a PNG file tells about itself, under the keywords that the PNG specification names. */
final class Particulars {

    private static final String PROGRAM = "Ferrule";

    private final DocumentInfo info;

    Particulars(DocumentInfo info) {
        this.info = info;
    }

    /** Adds them, and the density. */
    void addTo(IIOMetadata metadata, double pixelsPerMm) throws IIOInvalidTreeException {
        merge(metadata, IIOMetadataFormatImpl.standardMetadataFormatName, texts());
        merge(metadata, metadata.getNativeMetadataFormatName(), density(pixelsPerMm));
    }

    private static void merge(IIOMetadata metadata, String format, IIOMetadataNode child)
            throws IIOInvalidTreeException {
        IIOMetadataNode root = new IIOMetadataNode(format);
        root.appendChild(child);
        metadata.mergeTree(format, root);
    }

    /** In the words of PNG: the JDK takes the pixel size of its common format for its reciprocal (JDK 17). */
    private static IIOMetadataNode density(double pixelsPerMm) {
        String perMetre = String.valueOf(Math.round(1000 * pixelsPerMm));
        IIOMetadataNode density = new IIOMetadataNode("pHYs");
        density.setAttribute("pixelsPerUnitXAxis", perMetre);
        density.setAttribute("pixelsPerUnitYAxis", perMetre);
        density.setAttribute("unitSpecifier", "meter");
        return density;
    }

    private IIOMetadataNode texts() {
        IIOMetadataNode texts = new IIOMetadataNode("Text");
        add(texts, "Title", info.title());
        add(texts, "Author", info.author());
        add(texts, "Description", info.subject());
        add(texts, "Software", PROGRAM);
        add(texts, "Creation Time", info.created().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
        return texts;
    }

    private void add(IIOMetadataNode texts, String keyword, String value) {
        if (!value.isEmpty()) {
            IIOMetadataNode entry = new IIOMetadataNode("TextEntry");
            entry.setAttribute("keyword", keyword);
            entry.setAttribute("value", value);
            entry.setAttribute("language", info.language());
            entry.setAttribute("encoding", "");
            entry.setAttribute("compression", "none");
            texts.appendChild(entry);
        }
    }
}
