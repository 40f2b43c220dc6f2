/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;

/**
 * Lays a chart out on pages. Rows and columns that do not fit on one page are cut at borders of groups where that is
 * possible, and heads are repeated; each page has its own footnotes. The last page tells on what the chart rests. Every
 * page carries title, revision, date, rule set, legend and cautions. Cells are named {@code cell:ROW,COLUMN} for
 * hit-testing, heads {@code row:ROW} and {@code column:COLUMN}, counted from 0.
 */
public final class ChartPages {
    /** A chart that fits on one page is set as large as still fits. */
    private static final List<Double> ENLARGEMENTS = List.of(1.7, 1.55, 1.4, 1.3, 1.2, 1.1);

    private final PageRoom room;
    private final Pagination pagination;

    private ChartPages(Sheet sheet) {
        this.room = new PageRoom(sheet);
        this.pagination = new Pagination(sheet, room);
    }

    private static ChartPages largest(Sheet sheet) {
        ChartPages usual = new ChartPages(sheet);
        if (!usual.pagination.fitsOnePage()) {
            return usual;
        }
        return ENLARGEMENTS.stream().map(factor -> new ChartPages(sheet.enlarged(factor)))
                .filter(pages -> pages.pagination.fitsOnePage()).findFirst().orElse(usual);
    }

    /**
     * Makes the pages of a chart with English words.
     *
     * @param created the time that the document names as the time of its making
     */
    public static Document of(ChartContent content, OffsetDateTime created) {
        return of(content, created, ReasonWords.english(content.units()));
    }

    /** Makes the pages of a chart with words of one's own. */
    public static Document of(ChartContent content, OffsetDateTime created, ReasonWords words) {
        Imprint imprint = content.imprint();
        DocumentInfo info = DocumentInfo.of(Printable.line(imprint.title()), created)
                .by(Printable.line(imprint.author())).about(Printable.line(imprint.audience()));
        return new Document(info, largest(new Sheet(content, words)).pages());
    }

    private List<Picture> pages() {
        List<PageRoom.Body> bodies = pagination.pages();
        List<Picture> pages = new ArrayList<>();
        for (PageRoom.Body body : bodies) {
            pages.add(room.page(body, pagination.map(), pages.size() + 1, bodies.size()));
        }
        return pages;
    }
}
