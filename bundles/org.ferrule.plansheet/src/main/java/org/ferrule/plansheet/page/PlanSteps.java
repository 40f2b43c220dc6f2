/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.plansheet.page;

import java.util.EnumSet;
import java.util.stream.Collectors;

import org.ferrule.chart.page.PageStyle;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.plansheet.page.Detail.Omission;
import org.ferrule.plansheet.words.PlanWords;

/**
 * The steps of a short plan by themselves, as a plan sheet lists them, below the bars of its budgets: for where a picture is
 * wanted and no page. It tells neither stop rules nor cautions of its own, so it is nothing to hand out. Groups have the
 * names of those of {@link PlanSheet}.
 */
public final class PlanSteps {
    private static final double GAP_MM = 2;
    private static final int ALL = Integer.MAX_VALUE;
    private static final Detail BRIEF = new Detail(EnumSet.complementOf(EnumSet.of(Omission.BARS)), ALL, ALL, ALL, ALL);

    private PlanSteps() {
    }

    /**
     * The picture of a plan's steps.
     *
     * @param words that say them
     * @param widthMm of the picture; its height follows
     */
    public static Picture of(Plan plan, PlanWords words, double widthMm) {
        PageStyle style = new PageStyle(1);
        BudgetBars bars = new BudgetBars(plan, words, BRIEF, style, widthMm);
        RungTable table = new RungTable(plan, words, BRIEF, style, widthMm);
        double top = bars.heightMm() + GAP_MM;
        PictureBuilder g = new PictureBuilder();
        bars.draw(g, 0, 0);
        table.draw(g, 0, top);
        return g.picture(widthMm, top + table.heightMm() + GAP_MM, words.phrases().get("sheet.subject"))
                .described(plan.rungs().stream().map(words.rungs()::heading).collect(Collectors.joining("\n")));
    }
}
