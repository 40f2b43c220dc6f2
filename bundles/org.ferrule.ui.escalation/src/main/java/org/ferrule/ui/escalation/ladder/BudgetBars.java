/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.plansheet.words.Budget;
import org.ferrule.ui.escalation.live.PlannedCase;

/**
 * What is left of each budget: bars that run down to the right, with the share that the selected step takes at worst
 * hatched at their end, and what would go beyond the budget marked.
 */
final class BudgetBars extends Canvas {

    private static final int GAP = 16;
    private static final double LINES = 2.7;
    private static final double LINES_WITHOUT_DETAIL = 1.8;

    private LadderFonts fonts;
    private PlannedCase planned;
    private Rung step;
    private boolean stale;

    BudgetBars(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        fonts = new LadderFonts(getDisplay(), LadderSize.points());
        addListener(SWT.Paint, this::paint);
        addListener(SWT.Dispose, event -> fonts.dispose());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = words();
            }
        });
    }

    void show(PlannedCase shown, Optional<Rung> selected) {
        planned = shown;
        step = selected.orElse(null);
        stale = false;
        setToolTipText(words().replace("; ", "\n"));
        redraw();
    }

    void await() {
        stale = true;
        redraw();
    }

    void resized() {
        fonts.dispose();
        fonts = new LadderFonts(getDisplay(), LadderSize.points());
        redraw();
    }

    private List<Budget> budgets() {
        return planned == null ? List.of() : Budget.of(planned.plan());
    }

    /** Returns all that is shown, in words. */
    String words() {
        return String.join("; ", budgets().stream().map(b -> name(b) + ": " + left(b) + ", " + detail(b)).toList());
    }

    private String name(Budget budget) {
        String name = budget.resource().word();
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    private String left(Budget budget) {
        if (budget.limit().isEmpty()) {
            return amount(budget, budget.used()) + " used";
        }
        double left = budget.limit().getAsDouble() - budget.used();
        return left < 0 ? amount(budget, -left) + " over" : amount(budget, left) + " left";
    }

    private String detail(Budget budget) {
        double taken = step == null ? 0 : step.costs().of(budget.resource());
        if (budget.limit().isEmpty()) {
            return taken == 0 ? "no budget" : "step " + step.number() + ": " + amount(budget, taken);
        }
        String limit = "of "
                + planned.words().budgets().amounts().stated(budget.resource(), budget.limit().getAsDouble());
        return taken == 0 ? limit
                : "step " + step.number() + ": " + planned.words().budgets().amounts().number(taken) + " " + limit;
    }

    private String amount(Budget budget, double amount) {
        return planned.words().budgets().amounts().used(budget.resource(), amount);
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        List<Budget> budgets = budgets();
        int width = wHint == SWT.DEFAULT ? budgets.size() * needed(budgets, true) : wHint;
        int rows = rows(width, budgets);
        return new Point(width, rows * height(rows));
    }

    /** In several rows they do without what accompanies them, so that room is left for the ladder. */
    private int height(int rows) {
        return fonts.space(rows > 1 ? LINES_WITHOUT_DETAIL : LINES);
    }

    private int rows(int width, List<Budget> budgets) {
        if (budgets.size() * needed(budgets, true) <= width + GAP) {
            return 1;
        }
        int columns = Math.max(1, Math.min(budgets.size(), (width + GAP) / needed(budgets, false)));
        return Math.max(2, (budgets.size() + columns - 1) / columns);
    }

    /** How wide a bar has to be for its words, with the gap to the next. */
    private int needed(List<Budget> budgets, boolean detailed) {
        GC gc = new GC(this);
        try {
            gc.setFont(fonts.smallStrong());
            int heads = budgets.stream().mapToInt(b -> gc.textExtent(head(b)).x).max().orElse(1);
            gc.setFont(fonts.small());
            int details = detailed ? budgets.stream().mapToInt(b -> gc.textExtent(detail(b)).x).max().orElse(1) : 0;
            return Math.max(heads, details) + GAP;
        } finally {
            gc.dispose();
        }
    }

    private void paint(Event event) {
        GC gc = event.gc;
        Rectangle area = getClientArea();
        gc.setBackground(getParent().getBackground());
        gc.fillRectangle(area);
        gc.setAlpha(stale ? 110 : 255);
        List<Budget> budgets = budgets();
        int rows = rows(area.width, budgets);
        int columns = Math.max(1, (budgets.size() + rows - 1) / rows);
        int width = (area.width - (columns - 1) * GAP) / columns;
        for (int i = 0; i < budgets.size(); i++) {
            paint(gc, budgets.get(i), i % columns * (width + GAP), i / columns * height(rows), width,
                    rows == 1);
        }
    }

    private void paint(GC gc, Budget budget, int x, int y, int width, boolean detailed) {
        Rectangle before = gc.getClipping();
        gc.setClipping(new Rectangle(x, y, width, fonts.space(LINES)).intersection(before));
        gc.setForeground(isOver(budget) ? LadderInk.WARN.color() : LadderInk.TEXT.color());
        gc.setFont(fonts.smallStrong());
        gc.drawText(head(budget), x, y, SWT.DRAW_TRANSPARENT);
        int barTop = y + gc.getFontMetrics().getHeight() + 2;
        int bar = fonts.space(0.45);
        paintBar(gc, budget, new Rectangle(x, barTop, width, bar));
        if (detailed) {
            gc.setFont(fonts.small());
            gc.setForeground(LadderInk.MUTED.color());
            gc.drawText(detail(budget), x, barTop + bar + 2, SWT.DRAW_TRANSPARENT);
        }
        gc.setClipping(before);
    }

    private boolean isOver(Budget budget) {
        return budget.isUsedUp() || step != null && step.beyond().contains(budget.resource());
    }

    private String head(Budget budget) {
        return (isOver(budget) ? "\u25b2 " : "") + name(budget) + "  " + left(budget);
    }

    private void paintBar(GC gc, Budget budget, Rectangle bar) {
        if (budget.limit().isEmpty() || budget.limit().getAsDouble() <= 0) {
            return;
        }
        gc.setBackground(LadderInk.USED.color());
        gc.fillRectangle(bar);
        double limit = budget.limit().getAsDouble();
        int left = (int) Math.round(bar.width * Math.max(0, Math.min(1, 1 - budget.used() / limit)));
        gc.setBackground(LadderInk.LEFT.color());
        gc.fillRectangle(bar.x, bar.y, left, bar.height);
        double costs = step == null ? 0 : step.costs().of(budget.resource());
        int taken = Math.min(left, (int) Math.round(bar.width * costs / limit));
        hatch(gc, new Rectangle(bar.x + left - taken, bar.y, taken, bar.height));
        double worst = step == null ? budget.used() : step.worst().of(budget.resource());
        int line = (int) Math.round(bar.width * Math.max(0, Math.min(1, 1 - worst / limit)));
        gc.setForeground(LadderInk.TEXT.color());
        gc.setLineWidth(2);
        gc.drawLine(bar.x + line, bar.y - 2, bar.x + line, bar.y + bar.height + 2);
    }

    private static void hatch(GC gc, Rectangle area) {
        Rectangle before = gc.getClipping();
        gc.setClipping(area.intersection(before));
        gc.setForeground(LadderInk.CARD.color());
        gc.setLineWidth(2);
        for (int x = area.x - area.height; x < area.x + area.width; x += 5) {
            gc.drawLine(x, area.y + area.height, x + area.height, area.y);
        }
        gc.setClipping(before);
    }
}
