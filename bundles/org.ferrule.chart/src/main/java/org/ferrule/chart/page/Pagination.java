/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.picture.Box;

/**
 * Shares rows, columns, footnotes and closing words out over pages. Where all rows fit on a page, runs of columns stand
 * below each other as far as there is room.
 */
final class Pagination {
    private final Sheet sheet;
    private final Box room;
    private final TableWidths widths;
    private final List<Part> parts;
    private final PageMap map;

    /** What stands on one page: some rows, and runs of columns below each other. */
    private record Part(Span rows, List<Span> columns) {
    }

    Pagination(Sheet sheet, PageRoom pageRoom) {
        this.sheet = sheet;
        this.room = pageRoom.body();
        this.widths = TableWidths.of(sheet, room.widthMm());
        List<Span> rows = cutRows();
        this.parts = rows.size() == 1 ? stacked(rows.get(0)) : grid(rows);
        this.map = rows.size() == 1 ? new PageMap(1, parts.size()) : new PageMap(rows.size(), widths.columns().size());
    }

    PageMap map() {
        return map;
    }

    /** Whether the whole table stands on one page with all its footnotes. */
    boolean fitsOnePage() {
        return parts.size() == 1 && page(parts.get(0)).fits();
    }

    private TablePage page(Part part) {
        return new TablePage(sheet, widths, part.rows, part.columns, room);
    }

    private List<Span> cutRows() {
        List<Head> heads = sheet.content().rows();
        List<Span> spans = new ArrayList<>();
        int from = 0;
        while (from < heads.size() && !widths.columns().isEmpty()) {
            int end = from + 1;
            while (end < heads.size() && fit(new Span(from, end + 1))) {
                end++;
            }
            int to = Span.lastBorder(heads, from, end);
            spans.add(new Span(from, to));
            from = to;
        }
        return List.copyOf(spans);
    }

    /** Whether rows fit on a page with their footnotes, whatever the columns. */
    private boolean fit(Span rows) {
        return widths.columns().stream().allMatch(columns -> page(new Part(rows, List.of(columns))).fits());
    }

    private List<Part> grid(List<Span> rows) {
        List<Part> grid = new ArrayList<>();
        for (Span down : rows) {
            widths.columns().forEach(across -> grid.add(new Part(down, List.of(across))));
        }
        return List.copyOf(grid);
    }

    private List<Part> stacked(Span rows) {
        List<Part> stacks = new ArrayList<>();
        List<Span> stack = new ArrayList<>();
        for (Span run : widths.columns()) {
            List<Span> higher = new ArrayList<>(stack);
            higher.add(run);
            if (!stack.isEmpty() && !page(new Part(rows, higher)).fits()) {
                stacks.add(new Part(rows, List.copyOf(stack)));
                stack.clear();
            }
            stack.add(run);
        }
        stacks.add(new Part(rows, List.copyOf(stack)));
        return List.copyOf(stacks);
    }

    /** All pages: the parts of the table, footnotes for which there was no room, and what is said about the chart. */
    List<PageRoom.Body> pages() {
        List<PageRoom.Body> pages = new ArrayList<>();
        List<PageRoom.Body> after = new ArrayList<>();
        for (Part part : parts) {
            TablePage page = page(part);
            pages.add(page::draw);
            String title = sheet.phrases().fill("page.notes.continued", Integer.toString(pages.size()));
            after.addAll(textPages(title, page.leftOver(), NoteBlocks.columns(room.widthMm(), sheet.style())));
        }
        pages.addAll(after);
        pages.addAll(aboutPages());
        return pages;
    }

    private List<PageRoom.Body> aboutPages() {
        int columns = room.widthMm() > room.heightMm() ? 3 : 2;
        return textPages(sheet.phrases().get("page.about"), AboutText.of(sheet, columnMm(columns)), columns);
    }

    private double columnMm(int columns) {
        return (room.widthMm() - (columns - 1) * NoteBlocks.GAP_MM) / columns;
    }

    private List<PageRoom.Body> textPages(String title, List<Block> blocks, int columns) {
        List<PageRoom.Body> pages = new ArrayList<>();
        Block heading = new Block("", List.of(title), sheet.style().heading(), 0, 1.5);
        int next = 0;
        while (next < blocks.size()) {
            Block.Columns set = Block.set(blocks.subList(next, blocks.size()), columns, columnMm(columns),
                    NoteBlocks.GAP_MM, room.heightMm() - heading.heightMm());
            if (set.size() == 0) {
                throw new IllegalStateException("no room for \"" + blocks.get(next).lines().get(0) + "\" on a page");
            }
            pages.add((g, box) -> {
                heading.draw(g, box.xMm(), box.yMm());
                set.draw(g, box.xMm(), box.yMm() + heading.heightMm());
            });
            next += set.size();
        }
        return pages;
    }
}
