/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.export;

import java.util.Arrays;
import java.util.Objects;

/** A file that an exporter made. Immutable. */
public final class ExportedFile {
    private final String name;
    private final byte[] bytes;

    /**
     * A file.
     *
     * @param name with extension, without folder
     * @param bytes its content, copied
     */
    public ExportedFile(String name, byte[] bytes) {
        this.name = Objects.requireNonNull(name, "name");
        this.bytes = bytes.clone();
    }

    /** Its name with extension, without folder. */
    public String name() {
        return name;
    }

    /** Its content. */
    public byte[] bytes() {
        return Arrays.copyOf(bytes, bytes.length);
    }
}
