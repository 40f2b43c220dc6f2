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
    private static final double GAP_MM = 4;
    private static final int COLUMNS = 3;

    private final double columnMm;
    private final List<Column> columns;

    Closing(Plan plan, PlanWords words, Detail detail, PageStyle style, double widthMm) {
        Phrases phrases = words.phrases();
        Lists lists = new Lists(words, detail);
        this.columnMm = (widthMm - (COLUMNS - 1) * GAP_MM) / COLUMNS;
        Column stops = new Column(style, columnMm, detail.lines());
        lists.stops(plan.stops(), stops);
        plan.exits().forEach(exit -> stops.strong(phrases.fill("sheet.exit", words.names().move(exit.id()))));
        Column leftOut = stops.sibling(columnMm);
        lists.leftOut(plan.leftOut(), leftOut);
        Column basis = stops.sibling(columnMm).heading(phrases.get("sheet.assumptions"));
        List<String> assumptions = detail.tells(Omission.ASSUMPTIONS) ? words.assumptions().all(plan)
                : List.of(phrases.get("assume.independent"));
        assumptions.forEach(basis::muted);
        this.columns = List.of(stops, leftOut, basis);
    }

    double heightMm() {
        return columns.stream().mapToDouble(Column::heightMm).max().orElse(0);
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        for (int i = 0; i < columns.size(); i++) {
            columns.get(i).draw(g, xMm + i * (columnMm + GAP_MM), yMm);
        }
    }
}
