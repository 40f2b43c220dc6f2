/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;

/** Title, audience and conditions to the left; revision, date, author, rule set, libraries and page to the right. */
final class Header {
    private static final double RIGHT_SHARE = 0.36;
    private static final double BELOW_MM = 2.5;

    private final PageStyle style;
    private final Phrases phrases;
    private final double widthMm;
    private final List<Block> left;
    private final List<String> right;

    Header(Sheet sheet, double widthMm) {
        this.style = sheet.style();
        this.phrases = sheet.phrases();
        this.widthMm = widthMm;
        this.left = left(sheet.content());
        this.right = right(sheet.content());
    }

    private double rightMm() {
        return widthMm * RIGHT_SHARE;
    }

    private List<Block> left(ChartContent content) {
        List<Block> blocks = new ArrayList<>();
        add(blocks, content.imprint().title(), style.title());
        add(blocks, content.imprint().audience(), style.subtitle());
        content.imprint().signedOff().ifPresent(
                signed -> add(blocks, signed.head(), signed.upToDate() ? style.small() : style.heading()));
        if (!content.basis().conditions().isEmpty()) {
            add(blocks, phrases.fill("page.conditions", String.join("; ", content.basis().conditions())),
                    style.small());
        }
        return blocks;
    }

    private void add(List<Block> blocks, String text, TextStyle lettering) {
        if (!text.isBlank()) {
            blocks.add(new Block("", TextLayout.standard().wrap(Printable.line(text), lettering,
                    widthMm - rightMm() - 4), lettering, 0, 0.6));
        }
    }

    private List<String> right(ChartContent content) {
        List<String> lines = new ArrayList<>();
        Imprint imprint = content.imprint();
        String revision = phrases.fill(imprint.revision().isBlank() ? "page.revision.none" : "page.revision",
                imprint.revision(), imprint.date().toString());
        lines.add(imprint.author().isBlank() ? revision : revision + ", " + phrases.fill("page.by", imprint.author()));
        lines.add(phrases.fill("page.rules", edition(phrases, content.basis().rules())));
        if (!content.basis().libraries().isEmpty()) {
            lines.add(phrases.fill("page.libraries", content.basis().libraries().stream()
                    .map(library -> edition(phrases, library)).collect(Collectors.joining("; "))));
        }
        return lines.stream().flatMap(line -> TextLayout.standard()
                .wrap(Printable.line(line), style.muted(), rightMm()).stream()).toList();
    }

    static String edition(Phrases phrases, Edition edition) {
        return edition.revision().isBlank() ? edition.title()
                : phrases.fill("page.edition", edition.title(), edition.revision());
    }

    double heightMm() {
        double leftMm = left.stream().mapToDouble(Block::heightMm).sum();
        double rightLines = (right.size() + 1) * PageStyle.leading(style.muted());
        return Math.max(leftMm, rightLines) + BELOW_MM;
    }

    /** Draws it with "page x of y" and, where there are several pages, a map of them. */
    void draw(PictureBuilder g, double xMm, double yMm, PageMap map, int page, int pages) {
        double y = yMm;
        for (Block block : left) {
            block.draw(g, xMm, y);
            y += block.heightMm();
        }
        double end = xMm + widthMm - map.widthMm() - (map.widthMm() > 0 ? 3 : 0);
        List<String> lines = new ArrayList<>(right);
        lines.add(phrases.fill("page.of", number(page), number(pages)));
        double leading = PageStyle.leading(style.muted());
        g.lettering(style.muted());
        for (int i = 0; i < lines.size(); i++) {
            g.textEnd(end, PageStyle.baseline(yMm + i * leading, style.muted()), lines.get(i));
        }
        map.draw(g, xMm + widthMm - map.widthMm(), yMm, page - 1);
        g.pen(Ink.TEXT, 0.35).line(xMm, yMm + heightMm() - BELOW_MM / 2, xMm + widthMm,
                yMm + heightMm() - BELOW_MM / 2);
    }

    private static String number(int value) {
        return String.format(Locale.ROOT, "%d", value);
    }
}
