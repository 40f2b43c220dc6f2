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
    private final PlanWords words;
    private final Phrases phrases;
    private final Detail detail;

    Lists(PlanWords words, Detail detail) {
        this.words = words;
        this.phrases = words.phrases();
        this.detail = detail;
    }

    /** Always all of it. */
    void bailOut(List<BailOut> entries, Column column) {
        fill("sheet.bailOut", entries, column, Integer.MAX_VALUE, this::bailOut);
    }

    /** Always all of them. */
    void stops(List<StopStatus> entries, Column column) {
        fill("sheet.stop", entries, column, Integer.MAX_VALUE, this::stop);
    }

    void leftOut(List<LeftOut> entries, Column column) {
        fill("sheet.leftOut", entries, column, detail.entries(), this::leftOut);
    }

    private <T> void fill(String heading, List<T> entries, Column column, int most,
            BiConsumer<T, Column> writer) {
        column.heading(phrases.get(heading));
        if (entries.isEmpty()) {
            column.small(phrases.get("sheet.none"));
        }
        entries.stream().limit(most).forEach(entry -> writer.accept(entry, column));
        if (entries.size() > most) {
            column.small(phrases.fill("sheet.more", Integer.toString(entries.size() - most)));
        }
    }

    private void bailOut(BailOut bailOut, Column column) {
        BailOutMark mark = BailOutMark.of(bailOut);
        column.signed((g, at, size) -> mark.glyph().draw(g, at, size, Ink.TEXT),
                phrases.fill("sheet.marked", words.names().role(bailOut.role()), mark.word()), column.name());
        if (bailOut.isReady() || detail.tells(Omission.LACKS)) {
            column.small(words.status().single(bailOut.answer()));
        }
        words.status().picks(bailOut).forEach(pick -> column.box(pick, column.style().small()));
        column.gap(0.5);
    }

    private void stop(StopStatus status, Column column) {
        column.signed(StopSign::draw, words.status().stop(status), column.style().small());
        String standing = words.status().standing(status);
        if (status.reached()) {
            column.warning(standing, column.name());
        } else {
            column.muted(standing);
        }
        column.gap(0.4);
    }

    private void leftOut(LeftOut leftOut, Column column) {
        column.strong(words.leftOut().name(leftOut));
        column.small(detail.tells(Omission.LACKS) ? words.leftOut().why(leftOut)
                : words.leftOut().why(leftOut.why()));
        if (detail.tells(Omission.REMEDIES)) {
            words.leftOut().remedies(leftOut)
                    .forEach(remedy -> column.muted(phrases.fill("sheet.remedy", remedy)));
        }
        column.gap(0.4);
    }
}
