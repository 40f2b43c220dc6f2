/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.ferrule.engine.extension.Extensions;
import org.ferrule.picture.PictureExporter;

/** The formats in which pictures can leave the program, as plug-ins bring them. */
final class PictureFormats {

    private PictureFormats() {
    }

    /** All formats, in the order that they ask for. */
    static List<PictureExporter> all() {
        return Extensions.ofPlatform().pictureExporters();
    }

    /**
     * The format of an extension.
     *
     * @throws IllegalStateException if no plug-in brings it
     */
    static PictureExporter of(String extension) {
        return all().stream().filter(format -> format.extension().equals(extension)).findFirst()
                .orElseThrow(() -> new IllegalStateException("No plug-in writes pictures as ." + extension));
    }

    /** The format that a file's name asks for. */
    static Optional<PictureExporter> forFile(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return all().stream().filter(format -> lower.endsWith("." + format.extension())).findFirst();
    }
}
