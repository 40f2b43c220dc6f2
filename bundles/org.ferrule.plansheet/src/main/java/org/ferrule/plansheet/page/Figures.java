/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.look.Glyph;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;
import org.ferrule.plansheet.words.Budget;
import org.ferrule.plansheet.words.PlanWords;

/** The figures of the steps in narrow columns: cost per chance, then what is used when a step is over, at worst. */
final class Figures {
    private static final double GAP_MM = 1.4;

    private final PlanWords words;
    private final PageStyle style;
    private final List<Budget> budgets;
    private final Plan plan;
    private final List<String> heads = new ArrayList<>();
    private final List<Double> widths = new ArrayList<>();

    Figures(Plan plan, PlanWords words, PageStyle style) {
        this.plan = plan;
        this.words = words;
        this.style = style;
        this.budgets = Budget.of(plan);
        Phrases phrases = words.phrases();
        add(phrases.fill("sheet.head.index", words.budgets().amounts().unit(plan.file().aim().objective())), false);
        budgets.forEach(budget -> add(words.budgets().amounts().unit(budget.resource()), true));
    }

    /** A column is as wide as its widest number, with a sign where a limit may be passed. */
    private void add(String head, boolean signed) {
        int column = heads.size();
        heads.add(head);
        List<String> numbers = plan.rungs().stream().map(rung -> number(rung, column)).toList();
        double widest = TextLayout.standard().widestMm(numbers, bold()) + (signed ? sign() : 0);
        double word = TextLayout.standard().widestMm(List.of(head.split(" ")), bold());
        widths.add(Math.max(widest, word) + GAP_MM);
    }

    private TextStyle bold() {
        return style.small().bold();
    }

    private double sign() {
        return PageStyle.leading(bold());
    }

    double widthMm() {
        return widths.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** The room of the heads: the group over the sums, and one or two words each. */
    double headMm() {
        return 3 * PageStyle.leading(bold());
    }

    private String number(Rung rung, int column) {
        return column == 0 ? words.rungs().indexNumber(rung)
                : words.budgets().amounts().number(rung.worst().of(budgets.get(column - 1).resource()));
    }

    void drawHeads(PictureBuilder g, double xMm, double yMm) {
        double right = xMm;
        for (int i = 0; i < heads.size(); i++) {
            right += widths.get(i);
            List<String> lines = TextLayout.standard().wrap(heads.get(i), bold(), widths.get(i) - GAP_MM + 0.1);
            double base = PageStyle.baseline(yMm + headMm() - lines.size() * PageStyle.leading(bold()), bold());
            g.lettering(bold().in(Ink.PAPER));
            for (int k = 0; k < lines.size(); k++) {
                g.textEnd(right, base + k * PageStyle.leading(bold()), lines.get(k));
            }
        }
        group(g, xMm + widths.get(0), yMm);
    }

    private void group(PictureBuilder g, double left, double yMm) {
        double room = widthMm() - widths.get(0);
        List<String> lines = TextLayout.standard().wrap(words.phrases().get("sheet.head.sums"), style.small(),
                room - GAP_MM, 2);
        g.lettering(style.small().in(Ink.PAPER)).lines(left + GAP_MM, PageStyle.baseline(yMm, style.small()),
                PageStyle.leading(style.small()), lines);
    }

    void draw(PictureBuilder g, Rung rung, double xMm, double yMm) {
        double right = xMm;
        double base = PageStyle.baseline(yMm, bold());
        for (int i = 0; i < heads.size(); i++) {
            right += widths.get(i);
            boolean beyond = i > 0 && rung.beyond().contains(budgets.get(i - 1).resource());
            TextStyle lettering = beyond ? bold() : style.small();
            g.lettering(lettering).textEnd(right, base, number(rung, i));
            if (beyond) {
                double left = right - PageStyle.width(number(rung, i), lettering) - sign() / 2 - 0.3;
                Glyph.WARNING.draw(g, new Point(left, yMm + PageStyle.leading(lettering) / 2), sign() * 0.9,
                        Ink.TEXT);
            }
        }
    }
}
