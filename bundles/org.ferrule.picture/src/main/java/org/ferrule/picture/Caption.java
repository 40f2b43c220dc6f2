/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Words that go with a picture when it leaves the program: what it shows, and by what and from where it was drawn.
 *
 * @param title what it shows; may be empty
 * @param notes sources, rules, date; each may be of several lines
 */
public record Caption(String title, List<String> notes) {

    /** No words. */
    public static final Caption NONE = new Caption("", List.of());

    private static final TextStyle TITLE = TextStyle.ofPt(9).bold();
    private static final TextStyle NOTE = TextStyle.ofPt(7.5).in(Ink.MUTED);
    private static final double MARGIN_MM = 3;
    /** Narrower paper would break the words into pieces. */
    private static final double LEAST_WIDTH_MM = 80;

    public Caption {
        Check.printableLines("Title", title);
        notes = List.copyOf(notes);
        notes.forEach(note -> Check.printableLines("Note", note));
    }

    /** A caption of a title and notes. */
    public static Caption of(String title, String... notes) {
        return new Caption(title, List.of(notes));
    }

    /** Whether there are no words. */
    public boolean isEmpty() {
        return title.isEmpty() && notes.isEmpty();
    }

    /** This caption with one more note. */
    public Caption with(String note) {
        List<String> longer = new ArrayList<>(notes);
        longer.add(note);
        return new Caption(title, longer);
    }

    /** The picture on paper that has room for the words below it; the picture itself stays where and as it is. */
    public Picture below(Picture picture) {
        if (isEmpty()) {
            return picture;
        }
        double width = Math.max(picture.widthMm(), LEAST_WIDTH_MM);
        PictureBuilder builder = new PictureBuilder();
        double bottom = picture.heightMm() + MARGIN_MM;
        if (!title.isEmpty()) {
            bottom = write(title, TITLE, width, bottom, builder);
        }
        for (String note : notes) {
            bottom = write(note, NOTE, width, bottom, builder);
        }
        List<Element> elements = new ArrayList<>(picture.elements());
        elements.addAll(builder.elements());
        return new Picture(width, bottom + MARGIN_MM, picture.title(), picture.description(), elements);
    }

    /** Writes lines and returns where the next ones may begin. */
    private static double write(String words, TextStyle style, double width, double top, PictureBuilder builder) {
        TextLayout layout = TextLayout.standard();
        double leading = layout.measure().leadingMm(style);
        List<String> lines = layout.wrap(words, style, width - 2 * MARGIN_MM);
        builder.lettering(style).lines(MARGIN_MM, top + layout.measure().ascentMm(style), leading, lines);
        return top + leading * lines.size();
    }
}
