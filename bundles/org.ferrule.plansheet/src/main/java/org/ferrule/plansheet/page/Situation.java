/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.plansheet.drawing.SystemDrawing;
import org.ferrule.plansheet.words.PlanWords;

/**
 * Where the case stands: the system in place, what was done so far, what must be at hand; what to look at first, and the
 * budgets.
 */
final class Situation {
    private static final double LEFT = 0.42;
    private static final double GAP_MM = 6;
    private static final int COLUMNS = 3;
    private static final double ABOVE_MM = 1.5;

    private final double leftMm;
    private final Optional<Picture> system;
    private final Column left;
    private final Column right;
    private final Pieces atHand;
    private final Column budgetHead;
    private final BudgetBars budgets;

    Situation(Plan plan, PlanWords words, Detail detail, PageStyle style, double widthMm) {
        Phrases phrases = words.phrases();
        this.leftMm = widthMm * LEFT;
        double rightMm = widthMm - leftMm - GAP_MM;
        this.system = Optional
                .of(SystemDrawing.of(plan.progress().system(), words, Scheme.LIGHT, leftMm, style.scale()))
                .filter(picture -> detail.tells(Detail.Omission.DRAWING));
        this.left = new Column(style, leftMm, detail.lines());
        this.right = left.sibling(rightMm);
        this.atHand = new Pieces(left, COLUMNS, widthMm);
        this.budgetHead = new Column(style, rightMm, Integer.MAX_VALUE).heading(phrases.get("sheet.budgets"));
        if (detail.tells(Detail.Omission.BARS)) {
            budgetHead.muted(phrases.get("sheet.budgets.read"));
        }
        this.budgets = new BudgetBars(plan, words, detail, style, rightMm);
        if (system.isEmpty()) {
            left.full(phrases.fill("sheet.system", plan.progress().system().devices().stream()
                    .map(words.names()::device).collect(Collectors.joining(", "))));
        }
        plan.delivery().ifPresent(answer -> left.full(words.status().delivery(answer)));
        tried(plan, words).forEach(left::small);
        plan.progress().problems()
                .forEach(problem -> left.warning(words.status().problem(problem), style.small().bold()));
        new Lists(words, detail).bailOut(plan.bailOut(), atHand);
        if (!plan.looks().isEmpty()) {
            right.heading(phrases.get("sheet.looks"));
            plan.looks().stream()
                    .forEach(look -> right.box(words.names().move(look.id()), style.small()));
            right.gap(1.5);
        }
    }

    private static List<String> tried(Plan plan, PlanWords words) {
        List<String> done = new ArrayList<>();
        for (Attempt attempt : plan.file().log()) {
            done.add(words.status().attempt(attempt));
        }
        return done.isEmpty() ? List.of()
                : List.of(words.phrases().fill("sheet.tried", String.join("; ", done)));
    }

    private double systemMm() {
        return system.map(picture -> picture.heightMm() + 0.8).orElse(0.0);
    }

    double heightMm() {
        return upperMm() + ABOVE_MM + atHand.heightMm();
    }

    private double upperMm() {
        return Math.max(systemMm() + left.heightMm(),
                right.heightMm() + budgetHead.heightMm() + budgets.heightMm());
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        system.ifPresent(picture -> g.place(xMm, yMm, picture));
        left.draw(g, xMm, yMm + systemMm());
        double x = xMm + leftMm + GAP_MM;
        atHand.draw(g, xMm, yMm + upperMm() + ABOVE_MM);
        right.draw(g, x, yMm);
        budgetHead.draw(g, x, yMm + right.heightMm());
        budgets.draw(g, x, yMm + right.heightMm() + budgetHead.heightMm());
    }
}
