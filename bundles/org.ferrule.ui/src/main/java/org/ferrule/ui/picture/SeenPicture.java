/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.core.resources.IContainer;
import org.ferrule.picture.Caption;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureExporter;

/**
 * A picture as it is seen on a canvas, ready to leave the program. Immutable.
 *
 * @param picture what is seen, in its size and zoom
 * @param owner what is known about it
 * @param seen when
 */
record SeenPicture(Picture picture, PictureOwner owner, OffsetDateTime seen) {

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final int LONGEST_NAME = 60;

    /** What it is called. */
    String title() {
        return owner.caption().title().isEmpty() ? picture.title() : owner.caption().title();
    }

    /** Where a file is offered to be saved. */
    Optional<IContainer> folder() {
        return owner.folder();
    }

    /** A file name without extension that every system takes. */
    String fileName() {
        String plain = title().toLowerCase(Locale.ROOT).replaceAll("[^\\p{IsAlphabetic}\\p{IsDigit}.]+", "-")
                .replaceAll("^[-.]+|[-.]+$", "");
        String name = plain.substring(0, Math.min(plain.length(), LONGEST_NAME)).replaceAll("[-.]+$", "");
        return name.isEmpty() ? "picture" : name;
    }

    /** Exports the picture, with the words that go with it below it if wished. */
    byte[] export(PictureExporter exporter, boolean captioned) throws IOException {
        return exporter.export(captioned && !owner.complete() ? caption().below(picture) : picture, info());
    }

    /** The words that go with it. */
    Caption caption() {
        Caption known = owner.caption().isEmpty() ? Caption.of(picture.title()) : owner.caption();
        return known.with("Ferrule, " + seen.format(DATE));
    }

    private DocumentInfo info() {
        return DocumentInfo.of(title(), seen).about(String.join("; ", owner.caption().notes()).replace('\n', ' '));
    }
}
