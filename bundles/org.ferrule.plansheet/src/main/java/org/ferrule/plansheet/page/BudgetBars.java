/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.List;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.picture.Box;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.plansheet.words.Budget;
import org.ferrule.plansheet.words.PlanWords;

/**
 * What a plan uses up, as bars: what is used already, then one piece a step as if every step were taken, with its number;
 * a mark at the mean, a line at the limit, and what lies beyond it hatched.
 */
final class BudgetBars {
    private static final double BAR_MM = 3.2;
    private static final double AFTER_MM = 1.4;

    private final Plan plan;
    private final PlanWords words;
    private final PageStyle style;
    private final double widthMm;
    private final boolean bars;
    private final List<Budget> budgets;

    BudgetBars(Plan plan, PlanWords words, Detail detail, PageStyle style, double widthMm) {
        this.plan = plan;
        this.words = words;
        this.style = style;
        this.widthMm = widthMm;
        this.bars = detail.tells(Detail.Omission.BARS);
        this.budgets = Budget.of(plan);
    }

    private Column text(Budget budget) {
        Column text = new Column(style, widthMm, Integer.MAX_VALUE);
        String beyond = words.budgets().beyond(budget);
        text.small(words.phrases().fill("sheet.budget", budget.resource().word(),
                words.budgets().sums(budget)));
        if (budget.isUsedUp() || budget.beyond().isPresent()) {
            text.warning(beyond, style.small().bold());
        }
        return text;
    }

    private double barMm() {
        return BAR_MM * style.scale();
    }

    /** The bar with the room around it. */
    private double withRoomMm() {
        return bars ? barMm() + AFTER_MM + 1 : 0;
    }

    double heightMm() {
        return budgets.stream().mapToDouble(b -> text(b).heightMm() + withRoomMm()).sum();
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        double y = yMm;
        for (Budget budget : budgets) {
            Column text = text(budget);
            text.draw(g, xMm, y);
            y += text.heightMm();
            if (bars) {
                double top = y + 0.8;
                g.group(Frame.named("budget:" + budget.resource()), inner -> bar(inner, budget, xMm, top));
            }
            y += withRoomMm();
        }
    }

    private void bar(PictureBuilder g, Budget budget, double x, double y) {
        double most = Math.max(budget.worst(), budget.limit().orElse(0)) * 1.02;
        double scale = most > 0 ? widthMm / most : 0;
        g.noPen().fill(Ink.BAND).rect(new Box(x, y, widthMm, barMm()));
        g.noPen().fill(Ink.MUTED).rect(new Box(x, y, budget.used() * scale, barMm()));
        double from = budget.used();
        for (Rung rung : plan.rungs()) {
            double to = rung.worst().of(budget.resource());
            piece(g, rung, new Box(x + from * scale, y, Math.max(0, to - from) * scale, barMm()), budget.resource());
            from = to;
        }
        mean(g, x + budget.expected() * scale, y);
        budget.limit().ifPresent(limit -> g.pen(Ink.TEXT, 0.7).line(x + limit * scale, y - 0.7, x + limit * scale,
                y + barMm() + 0.7));
    }

    private void piece(PictureBuilder g, Rung rung, Box box, Resource resource) {
        boolean beyond = rung.beyond().contains(resource);
        Ink ground = rung.number() % 2 == 0 ? DrawingInks.LUMEN : DrawingInks.SHAFT;
        g.pen(Ink.MUTED, 0.15).fill(beyond ? Fill.of(Ink.PAPER, Hatch.of(Hatch.Pattern.RISING, DrawingInks.LIMIT))
                : Fill.of(ground)).rect(box);
        TextStyle lettering = style.small();
        String number = Integer.toString(rung.number());
        double needed = PageStyle.width(number, lettering) + 0.8;
        if (needed <= box.widthMm() && !beyond) {
            g.lettering(lettering).textMiddle(box.centre().xMm(),
                    box.centre().yMm() + TextMeasure.standard().capHeightMm(lettering) / 2, number);
        }
    }

    /** A small triangle below the bar. */
    private void mean(PictureBuilder g, double x, double y) {
        double top = y + barMm();
        g.noPen().fill(Ink.TEXT).polygon(new Point(x, top - 0.6), new Point(x + 0.9, top + 1),
                new Point(x - 0.9, top + 1));
    }
}
