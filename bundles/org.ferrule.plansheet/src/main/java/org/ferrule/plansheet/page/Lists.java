/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.List;
import java.util.function.BiConsumer;

import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.plan.BailOut;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.StopStatus;
import org.ferrule.picture.Ink;
import org.ferrule.plansheet.page.Detail.Omission;
import org.ferrule.plansheet.words.BailOutMark;
import org.ferrule.plansheet.words.PlanWords;

/** The lists of a sheet: what must be at hand, when to stop, what is not in the plan. */
final class Lists {
    private static final double AFTER_MM = 0.5;

    private final PlanWords words;
    private final Phrases phrases;
    private final Detail detail;

    Lists(PlanWords words, Detail detail) {
        this.words = words;
        this.phrases = words.phrases();
        this.detail = detail;
    }

    /** Always all of it. */
    void bailOut(List<BailOut> entries, Pieces pieces) {
        fill("sheet.bailOut", entries, pieces, Integer.MAX_VALUE, this::bailOut);
    }

    /** Always all of them, in full. */
    void stops(List<StopStatus> entries, Pieces pieces) {
        fill("sheet.stop", entries, pieces, Integer.MAX_VALUE, this::stop);
    }

    void leftOut(List<LeftOut> entries, Pieces pieces) {
        fill("sheet.leftOut", entries, pieces, detail.entries(), this::leftOut);
    }

    void assumptions(List<String> all, Pieces pieces) {
        fill("sheet.assumptions", all, pieces, Integer.MAX_VALUE, (line, column) -> column.muted(line));
    }

    void why(List<String> all, Pieces pieces) {
        fill("sheet.why", all, pieces, Integer.MAX_VALUE, (line, column) -> column.muted(line));
    }

    /** Always all of them, in full; no heading where none is stated. */
    void limits(List<String> all, Pieces pieces) {
        if (!all.isEmpty()) {
            fill("sheet.limits", all, pieces, Integer.MAX_VALUE, (line, column) -> column.full(line).gap(AFTER_MM));
        }
    }

    /** The heading stays with the first entry. */
    private <T> void fill(String heading, List<T> entries, Pieces pieces, int most, BiConsumer<T, Column> writer) {
        if (entries.isEmpty()) {
            pieces.add(column -> column.heading(phrases.get(heading)).small(phrases.get("sheet.none")).gap(AFTER_MM));
        }
        int shown = Math.min(most, entries.size());
        for (int i = 0; i < shown; i++) {
            T entry = entries.get(i);
            boolean first = i == 0;
            pieces.add(column -> writer.accept(entry, first ? column.heading(phrases.get(heading)) : column));
        }
        if (entries.size() > shown) {
            pieces.add(column -> column.small(phrases.fill("sheet.more", Integer.toString(entries.size() - shown))));
        }
    }

    private void bailOut(BailOut bailOut, Column column) {
        BailOutMark mark = BailOutMark.of(bailOut);
        column.signed((g, at, size) -> mark.glyph().draw(g, at, size, Ink.TEXT),
                phrases.fill("sheet.marked", words.names().role(bailOut.role()), mark.word()), column.name());
        if (bailOut.isReady()) {
            words.status().boxes(bailOut).forEach(box -> column.box(box, column.style().small()));
        } else if (detail.tells(Omission.LACKS)) {
            column.small(words.status().single(bailOut.answer()));
        }
        column.gap(AFTER_MM);
    }

    private void stop(StopStatus status, Column column) {
        column.fullSigned(StopSign::draw, words.status().stop(status));
        if (status.reached() || status.rung().isPresent()) {
            column.warning(words.status().standing(status), column.name());
        }
        column.gap(AFTER_MM);
    }

    private void leftOut(LeftOut leftOut, Column column) {
        column.strong(words.leftOut().name(leftOut));
        column.small(detail.tells(Omission.LACKS) ? words.leftOut().why(leftOut)
                : words.leftOut().why(leftOut.why()));
        if (detail.tells(Omission.REMEDIES)) {
            words.leftOut().remedies(leftOut)
                    .forEach(remedy -> column.muted(phrases.fill("sheet.remedy", remedy)));
        }
        column.gap(AFTER_MM);
    }
}
