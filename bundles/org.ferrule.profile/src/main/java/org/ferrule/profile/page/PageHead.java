/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;

/** The head of a page: title to the left, date to the right, below them rule set, libraries and conditions. */
final class PageHead {
    private static final double BELOW_MM = 2.5;

    private final PageStyle style;
    private final double widthMm;
    private final String date;
    private final String title;
    private final List<String> basis;

    PageHead(Imprint imprint, Basis basis, Phrases phrases, PageStyle style, double widthMm) {
        this.style = style;
        this.widthMm = widthMm;
        this.date = imprint.date().toString();
        double dateMm = PageStyle.width(date, style.strong()) + 4;
        this.title = TextLayout.standard().shorten(Printable.line(imprint.title()), style.title(), widthMm - dateMm);
        List<String> parts = new ArrayList<>();
        parts.add(phrases.fill("page.rules", edition(basis.rules(), phrases)));
        parts.add(phrases.fill("page.libraries",
                basis.libraries().stream().map(e -> edition(e, phrases)).collect(Collectors.joining("; "))));
        parts.addAll(basis.conditions());
        this.basis = TextLayout.standard().wrap(Printable.line(String.join(" \u00b7 ", parts)), style.muted(), widthMm);
    }

    private static String edition(Edition edition, Phrases phrases) {
        return edition.revision().isBlank() ? edition.title()
                : phrases.fill("page.edition", edition.title(), edition.revision());
    }

    double heightMm() {
        return PageStyle.leading(style.title()) + basis.size() * PageStyle.leading(style.muted()) + BELOW_MM;
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        double baseline = PageStyle.baseline(yMm, style.title());
        g.lettering(style.title()).text(xMm, baseline, title);
        g.lettering(style.strong()).textEnd(xMm + widthMm, baseline, date);
        double below = yMm + PageStyle.leading(style.title());
        g.lettering(style.muted()).lines(xMm, PageStyle.baseline(below, style.muted()),
                PageStyle.leading(style.muted()), basis);
        double line = yMm + heightMm() - BELOW_MM / 2;
        g.pen(Ink.TEXT, 0.35).line(xMm, line, xMm + widthMm, line);
    }
}
