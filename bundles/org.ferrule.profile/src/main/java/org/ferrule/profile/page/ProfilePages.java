/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.page;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.page.Block;
import org.ferrule.chart.page.Footer;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.profile.plot.ProfilePlot;

/**
 * A comparison on paper: the plot with its legend, the table of differences below it or on the next page, then the
 * findings in words and the sources. Every page has title, date, rule set and caution.
 */
public final class ProfilePages {
    private static final double GAP_MM = 4;
    private static final double LEAST_PLOT_MM = 120;
    private static final int COLUMNS = 3;

    private final ProfileContent content;
    private final PageStyle style;
    private final double marginMm;
    private final double widthMm;
    private final PageHead head;
    private final Footer footer;
    private final DifferencesTable table;
    private final List<Picture> pages = new ArrayList<>();

    private ProfilePages(ProfileContent content) {
        this.content = content;
        this.style = new PageStyle(content.paper().scale());
        this.marginMm = style.margin();
        this.widthMm = content.paper().widthMm() - 2 * marginMm;
        Phrases phrases = content.words().phrases();
        this.head = new PageHead(content.imprint(), content.basis(), phrases, style, widthMm);
        this.footer = new Footer(style, List.of(phrases.get("page.caution")), widthMm);
        this.table = new DifferencesTable(content.comparison(), content.words(), style, widthMm);
    }

    /**
     * The pages.
     *
     * @param created when they were made
     */
    public static Document of(ProfileContent content, OffsetDateTime created) {
        ProfilePages pages = new ProfilePages(content);
        pages.layOut();
        DocumentInfo info = DocumentInfo.of(Printable.line(content.imprint().title()), created)
                .by(Printable.line(content.imprint().author()));
        return new Document(info, pages.pages);
    }

    private double roomMm() {
        return content.paper().heightMm() - 2 * marginMm - head.heightMm() - footer.heightMm() - GAP_MM;
    }

    private double topMm() {
        return marginMm + head.heightMm();
    }

    private void layOut() {
        boolean tableBelow = roomMm() - table.heightMm() - GAP_MM >= LEAST_PLOT_MM;
        PictureBuilder first = page();
        double plotMm = tableBelow ? roomMm() - table.heightMm() - GAP_MM : roomMm();
        Picture plot = new ProfilePlot(content.comparison(), content.view(), content.words(), widthMm, plotMm)
                .picture();
        first.place(marginMm, topMm(), plot);
        if (tableBelow) {
            table.draw(first, marginMm, topMm() + plotMm + GAP_MM);
        }
        finish(first, plot.description());
        words(tableBelow);
    }

    private void words(boolean tableDone) {
        double columnMm = (widthMm - (COLUMNS - 1) * GAP_MM) / COLUMNS;
        List<Block> blocks = FindingBlocks.of(content.comparison(), content.words(), style, columnMm);
        boolean withTable = !tableDone;
        do {
            PictureBuilder next = page();
            double used = withTable ? table.heightMm() + GAP_MM : 0;
            if (withTable) {
                table.draw(next, marginMm, topMm());
            }
            Block.Columns set = Block.set(blocks, COLUMNS, columnMm, GAP_MM, roomMm() - used);
            set.draw(next, marginMm, topMm() + used);
            finish(next, "");
            blocks = withTable || set.size() > 0 ? blocks.subList(set.size(), blocks.size()) : List.of();
            withTable = false;
        } while (!blocks.isEmpty());
    }

    private PictureBuilder page() {
        PictureBuilder g = new PictureBuilder();
        head.draw(g, marginMm, marginMm);
        return g;
    }

    private void finish(PictureBuilder g, String description) {
        footer.draw(g, marginMm, content.paper().heightMm() - marginMm - footer.heightMm());
        pages.add(g.picture(content.paper().widthMm(), content.paper().heightMm(),
                Printable.line(content.imprint().title())).described(description));
    }
}
