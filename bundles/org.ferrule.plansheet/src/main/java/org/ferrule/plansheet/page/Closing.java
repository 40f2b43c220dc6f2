/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.List;

import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.plansheet.page.Detail.Omission;
import org.ferrule.plansheet.words.PlanWords;

/** What stands below the steps: when to stop, what is not in the plan, on what the order rests. */
final class Closing {
    private static final int COLUMNS = 3;

    private final Pieces pieces;

    Closing(SheetContent content, Detail detail, PageStyle style, double widthMm) {
        Plan plan = content.plan();
        PlanWords words = content.words();
        Phrases phrases = words.phrases();
        Lists lists = new Lists(words, detail);
        this.pieces = new Pieces(new Column(style, widthMm, detail.lines()), COLUMNS, widthMm);
        lists.stops(plan.stops(), pieces);
        plan.exits().forEach(exit -> pieces.add(column -> column.strong(
                phrases.fill("sheet.exit", words.names().move(exit.id()))).gap(1)));
        lists.limits(content.limits(), pieces);
        if (words.status().isOpen(plan)) {
            addWhatThePlanRestsOn(plan, words, detail, lists);
            content.reasons().filter(reasons -> detail.tells(Omission.WHY))
                    .ifPresent(reasons -> lists.why(words.why().brief(reasons, plan), pieces));
        }
    }

    private void addWhatThePlanRestsOn(Plan plan, PlanWords words, Detail detail, Lists lists) {
        lists.leftOut(plan.leftOut(), pieces);
        lists.assumptions(detail.tells(Omission.ASSUMPTIONS) ? words.assumptions().all(plan)
                : List.of(words.phrases().get("assume.independent")), pieces);
    }

    double heightMm() {
        return pieces.heightMm();
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        pieces.draw(g, xMm, yMm);
    }
}
