/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.recovery;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;

import org.eclipse.core.runtime.IPath;

/** The files of the journal: four lines of text, then the document as it is. */
final class JournalFormat {

    private static final String MARK = "ferrule unsaved 1";
    private static final int LINES = 4;

    private JournalFormat() {
    }

    static byte[] write(UnsavedEdits edits) {
        String head = String.join("\n", MARK, edits.path().toPortableString(), edits.time().toString(), edits.base())
                + "\n";
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(head.getBytes(StandardCharsets.UTF_8));
        bytes.writeBytes(edits.content());
        return bytes.toByteArray();
    }

    /**
     * Reads edits.
     *
     * @throws IOException if it is no file of the journal
     */
    static UnsavedEdits read(byte[] bytes) throws IOException {
        String[] head = new String[LINES];
        int start = 0;
        for (int i = 0; i < LINES; i++) {
            int end = endOfLine(bytes, start);
            head[i] = new String(bytes, start, end - start, StandardCharsets.UTF_8);
            start = end + 1;
        }
        if (!MARK.equals(head[0])) {
            throw new IOException("it starts with \"" + head[0] + "\"");
        }
        return new UnsavedEdits(IPath.fromPortableString(head[1]), time(head[2]), head[3],
                Arrays.copyOfRange(bytes, start, bytes.length));
    }

    private static int endOfLine(byte[] bytes, int start) throws IOException {
        for (int i = start; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                return i;
            }
        }
        throw new IOException("it is cut off");
    }

    private static Instant time(String text) throws IOException {
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            throw new IOException("its time is \"" + text + "\"", e);
        }
    }
}
