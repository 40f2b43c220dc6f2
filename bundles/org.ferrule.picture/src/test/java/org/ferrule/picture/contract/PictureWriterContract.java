/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture.contract;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ferrule.picture.Element;
import org.ferrule.picture.Group;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Text;
import org.junit.jupiter.api.Test;

/** What every writer of pictures must keep to. */
public abstract class PictureWriterContract {

    /** Room for the digits that a format keeps. */
    private static final double PAPER_TOLERANCE_MM = 0.001;

    /** Writes one picture. */
    protected abstract void write(Picture picture, OutputStream out) throws IOException;

    /** Reads back all text on the page, in the order in which it was painted, without any separators. */
    protected abstract String letters(byte[] written) throws Exception;

    /** Reads back width and height of the paper. */
    protected abstract double[] paperMm(byte[] written) throws Exception;

    /** Reads back the title. */
    protected abstract String title(byte[] written) throws Exception;

    @Test
    void keepsEveryLetterOfEveryText() throws Exception {
        Picture picture = SamplePictures.everything();
        String put = texts(picture.elements()).collect(Collectors.joining());
        assertEquals(put, letters(bytes(picture)));
    }

    @Test
    void keepsThePaper() throws Exception {
        assertArrayEquals(new double[] { 120, 160 }, paperMm(bytes(SamplePictures.everything())), PAPER_TOLERANCE_MM);
    }

    @Test
    void keepsTheTitle() throws Exception {
        Picture picture = SamplePictures.everything();
        assertEquals(picture.title(), title(bytes(picture)));
    }

    @Test
    void writesABlankPage() throws Exception {
        byte[] written = bytes(SamplePictures.blank());
        assertEquals("", letters(written));
        assertArrayEquals(new double[] { 30, 20 }, paperMm(written), PAPER_TOLERANCE_MM);
    }

    @Test
    void samePictureGivesTheSameBytesUnderEveryLocale() throws IOException {
        byte[] first = bytes(SamplePictures.everything());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(first, bytes(SamplePictures.everything()));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void leavesTheStreamOpen() throws IOException {
        ClosingNoted out = new ClosingNoted();
        write(SamplePictures.blank(), out);
        assertFalse(out.closed);
    }

    @Test
    void passesOnWhatGoesWrongWithTheStream() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int value) throws IOException {
                throw new IOException("no room left");
            }
        };
        IOException thrown = assertThrows(IOException.class, () -> write(SamplePictures.everything(), full));
        assertEquals("no room left", thrown.getMessage());
    }

    /** The bytes of a picture. */
    protected byte[] bytes(Picture picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        write(picture, out);
        return out.toByteArray();
    }

    private static Stream<String> texts(List<Element> elements) {
        return elements.stream().flatMap(element -> element instanceof Group group ? texts(group.elements())
                : element instanceof Text text ? Stream.of(text.string()) : Stream.empty());
    }

    private static final class ClosingNoted extends ByteArrayOutputStream {
        private boolean closed;

        @Override
        public void close() {
            closed = true;
        }
    }
}
