/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.ferrule.chart.words.Printable;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;

/**
 * The words of a head, broken into lines.
 *
 * @param name of the device
 * @param details size, lumen, figure and kind
 */
record HeadText(List<String> name, List<String> details) {

    /**
     * Breaks to a width; nothing is left out.
     *
     * @param figure what stands for the head's figure
     */
    static HeadText of(Head head, boolean withKind, String figure, PageStyle style, double widthMm) {
        TextLayout layout = TextLayout.standard();
        String details = details(head, withKind, figure);
        return new HeadText(layout.wrap(Printable.line(head.title()), style.strong(), widthMm),
                details.isEmpty() ? List.of() : layout.wrap(details, style.muted(), widthMm));
    }

    /** Parts break at their ends first: figures and their units stay together. */
    private static String details(Head head, boolean withKind, String figure) {
        Stream<String> kind = withKind ? Stream.of(head.kind()) : Stream.empty();
        Stream<String> figures = Stream.of(head.size(), head.lumen(), figure)
                .map(text -> text.strip().replace(' ', '\u00a0'));
        return Stream.concat(kind, figures).filter(text -> !text.isBlank()).map(Printable::line)
                .reduce((a, b) -> a + "\u00a0\u00b7 " + b).orElse("");
    }

    /** Whether a head's kind is not told by its group or by being everybody's. */
    static boolean showsKind(List<Head> heads) {
        return heads.stream().map(Head::kind).distinct().count() > 1
                && heads.stream().anyMatch(head -> !head.group().toLowerCase(Locale.ROOT)
                        .contains(head.kind().toLowerCase(Locale.ROOT)));
    }

    /** The width of the longest word, below which words would be broken. */
    static double longestWordMm(Head head, boolean withKind, String figure, PageStyle style) {
        return Math.max(longest(Printable.line(head.title()), style.strong()),
                longest(details(head, withKind, figure), style.muted())) + 0.1;
    }

    private static double longest(String text, TextStyle lettering) {
        return Stream.of(text.split(" ")).mapToDouble(word -> PageStyle.width(word, lettering)).max().orElse(0);
    }

    /** The room across the lines. */
    double heightMm(PageStyle style) {
        return name.size() * PageStyle.leading(style.strong()) + details.size() * PageStyle.leading(style.muted());
    }

    /** The width of the longest line. */
    double widthMm(PageStyle style) {
        TextLayout layout = TextLayout.standard();
        return Math.max(layout.widestMm(name, style.strong()), layout.widestMm(details, style.muted()));
    }

    /** Hands over every line with its style and where its baseline lies below the top of the words. */
    void forEachLine(PageStyle style, LineUser user) {
        double top = 0;
        for (String line : name) {
            user.line(line, style.strong(), PageStyle.baseline(top, style.strong()));
            top += PageStyle.leading(style.strong());
        }
        for (String line : details) {
            user.line(line, style.muted(), PageStyle.baseline(top, style.muted()));
            top += PageStyle.leading(style.muted());
        }
    }

    /** Takes one line of a head. */
    @FunctionalInterface
    interface LineUser {
        void line(String text, TextStyle style, double baselineMm);
    }

    /** All lines. */
    List<String> lines() {
        List<String> lines = new ArrayList<>(name);
        lines.addAll(details);
        return lines;
    }
}
