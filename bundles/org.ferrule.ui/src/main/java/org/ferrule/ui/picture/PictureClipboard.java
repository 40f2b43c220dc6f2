/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;

/** Puts pictures into the clipboard, with the words that go with them. */
final class PictureClipboard {

    private final Display display;

    PictureClipboard(Display display) {
        this.display = display;
    }

    /** As an image, for documents and slides. */
    void copyImage(SeenPicture seen) throws IOException {
        byte[] png = seen.export(PictureFormats.of("png"), true);
        put(new ImageData(new ByteArrayInputStream(png)), ImageTransfer.getInstance());
    }

    /** As the text of an SVG file, for drawing programs and web pages. */
    void copySvg(SeenPicture seen) throws IOException {
        put(new String(seen.export(PictureFormats.of("svg"), true), StandardCharsets.UTF_8),
                TextTransfer.getInstance());
    }

    private void put(Object content, Transfer transfer) {
        Clipboard clipboard = new Clipboard(display);
        try {
            clipboard.setContents(new Object[] { content }, new Transfer[] { transfer });
        } finally {
            clipboard.dispose();
        }
    }
}
