/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Box;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;

/** What all pages of a chart have alike, and the room that it leaves between header and footer. */
final class PageRoom {
    private final Sheet sheet;
    private final double margin;
    private final double widthMm;
    private final double heightMm;
    private final Header header;
    private final Legend legend;
    private final Footer footer;

    /** Draws what stands between header and footer. */
    @FunctionalInterface
    interface Body {
        void draw(PictureBuilder g, Box room);
    }

    PageRoom(Sheet sheet) {
        this.sheet = sheet;
        this.margin = sheet.style().margin();
        this.widthMm = sheet.content().paper().widthMm() - 2 * margin;
        this.heightMm = sheet.content().paper().heightMm() - 2 * margin;
        this.header = new Header(sheet, widthMm);
        this.legend = new Legend(sheet, Counts.in(sheet.content()), widthMm);
        this.footer = Footer.of(sheet, widthMm);
    }

    /** The room between header and footer. */
    Box body() {
        double top = margin + header.heightMm();
        double bottom = margin + heightMm - footer.heightMm() - legend.heightMm() - 2;
        return new Box(margin, top, widthMm, bottom - top);
    }

    Picture page(Body body, PageMap map, int page, int pages) {
        PictureBuilder g = new PictureBuilder();
        header.draw(g, margin, margin, map, page, pages);
        body.draw(g, body());
        double footerY = margin + heightMm - footer.heightMm();
        legend.draw(g, margin, footerY - legend.heightMm());
        footer.draw(g, margin, footerY);
        String title = Printable.line(sheet.content().imprint().title());
        return g.picture(sheet.content().paper().widthMm(), sheet.content().paper().heightMm(), title)
                .described(sheet.phrases().fill("page.of", Integer.toString(page), Integer.toString(pages)) + "\n"
                        + Counts.in(sheet.content()).inWords());
    }
}
