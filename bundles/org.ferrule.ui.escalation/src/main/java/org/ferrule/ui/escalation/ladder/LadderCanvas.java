/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.picture.Picture;
import org.ferrule.ui.escalation.live.PlannedCase;

/** The ladder: scrolls, and lets a step be selected with the arrow keys or the mouse. */
public final class LadderCanvas {

    private static final int SCROLL = 40;

    private final ScrolledComposite scroller;
    private final Canvas canvas;
    private LadderFonts fonts;
    private Sheet sheet = Sheet.EMPTY;
    private PlannedCase planned;
    private boolean stale;
    private final Folds folds = new Folds();
    private int selected = 1;
    private IntConsumer selection = number -> {
    };

    LadderCanvas(Composite parent) {
        scroller = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.BORDER);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.getVerticalBar().setIncrement(SCROLL);
        canvas = new Canvas(scroller, SWT.DOUBLE_BUFFERED);
        scroller.setContent(canvas);
        scroller.addListener(SWT.Resize, event -> lay());
        fonts = new LadderFonts(canvas.getDisplay(), LadderSize.points());
        canvas.addListener(SWT.Paint, this::paint);
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.MouseDown, this::click);
        canvas.addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.addListener(SWT.Dispose, event -> {
            sheet.dispose();
            fonts.dispose();
        });
        canvas.getAccessible().addAccessibleListener(new Words());
    }

    /** Returns the control to lay out. */
    Control control() {
        return scroller;
    }

    /** Returns the control that takes keys. */
    public Control canvas() {
        return canvas;
    }

    /** Sets what is done when another step is selected. */
    void onSelect(IntConsumer listener) {
        selection = listener;
    }

    /** Shows a plan. */
    void show(PlannedCase shown) {
        boolean other = planned != shown;
        planned = shown;
        stale = false;
        if (other) {
            selected = Math.max(1, Math.min(selected, shown.plan().rungs().size()));
            lay();
        }
        canvas.redraw();
    }

    /** Returns the picture of the selected step as it leaves the program. */
    public Optional<Picture> picture() {
        return stale ? Optional.empty() : sheet.picture(selected);
    }

    /** Selects the step at a place of the canvas, if there is one. */
    void selectAt(int x, int y) {
        sheet.steps().entrySet().stream().filter(step -> step.getValue().contains(x, y)).map(Map.Entry::getKey)
                .findFirst().filter(number -> number != selected).ifPresent(this::select);
    }

    /** What is shown does not count any more. */
    void await() {
        stale = true;
        canvas.redraw();
    }

    /** Takes the lettering anew from the setting. */
    void resized() {
        fonts.dispose();
        fonts = new LadderFonts(canvas.getDisplay(), LadderSize.points());
        lay();
    }

    private void lay() {
        int width = scroller.getClientArea().width;
        if (planned == null || width <= 0) {
            return;
        }
        sheet.dispose();
        sheet = new LadderColumns(canvas.getDisplay(), fonts, planned, selected, folds).write(width);
        scroller.setMinHeight(sheet.height());
        scroller.getVerticalBar().setPageIncrement(Math.max(SCROLL, scroller.getClientArea().height - SCROLL));
        canvas.redraw();
    }

    private void paint(Event event) {
        event.gc.setBackground(LadderInk.GROUND.color());
        event.gc.fillRectangle(event.x, event.y, event.width, event.height);
        if (stale) {
            event.gc.setAlpha(110);
        }
        sheet.paint(event.gc);
        event.gc.setAlpha(255);
        if (canvas.isFocusControl()) {
            bounds(selected).ifPresent(b -> event.gc.drawFocus(b.x - 3, b.y - 3, b.width + 6, b.height + 6));
        }
    }

    private void key(Event event) {
        switch (event.keyCode) {
            case SWT.ARROW_DOWN -> select(selected + 1);
            case SWT.ARROW_UP -> select(selected - 1);
            case SWT.HOME -> select(1);
            case SWT.END -> select(planned == null ? 1 : planned.plan().rungs().size());
            case SWT.PAGE_DOWN -> scroll(scroller.getClientArea().height - SCROLL);
            case SWT.PAGE_UP -> scroll(SCROLL - scroller.getClientArea().height);
            default -> fold(Character.toLowerCase(event.character), event.stateMask & SWT.MODIFIER_MASK & ~SWT.SHIFT);
        }
    }

    /** Folds or unfolds what a letter without a modifier stands for; others may listen to the rest. */
    private void fold(char letter, int modifiers) {
        if (modifiers != 0) {
            return;
        }
        if (letter == 'w') {
            selected().ifPresent(rung -> fold(Folds.of(rung)));
        } else if (letter == 'o') {
            fold(Folds.ORDER);
        } else if (letter == 'l') {
            fold(Folds.LIMITS);
        }
    }

    private void fold(String part) {
        folds.toggle(part);
        lay();
        Optional.ofNullable(sheet.folds().get(part)).ifPresent(this::scrollTo);
    }

    private void scroll(int pixels) {
        Point origin = scroller.getOrigin();
        scroller.setOrigin(origin.x, origin.y + pixels);
    }

    private void click(Event event) {
        canvas.setFocus();
        selectAt(event.x, event.y);
        sheet.folds().entrySet().stream().filter(fold -> fold.getValue().contains(event.x, event.y))
                .map(Map.Entry::getKey).findFirst().ifPresent(this::fold);
    }

    /** Selects the step of a number, if there is one, and scrolls to it. */
    public void select(int number) {
        if (planned == null || number < 1 || number > planned.plan().rungs().size()) {
            return;
        }
        selected = number;
        lay();
        bounds(number).ifPresent(this::scrollTo);
        selection.accept(number);
    }

    private void scrollTo(Rectangle bounds) {
        int top = scroller.getOrigin().y;
        int height = scroller.getClientArea().height;
        if (bounds.y < top || bounds.y + bounds.height > top + height) {
            scroller.setOrigin(0, Math.max(0, bounds.y - fonts.space(0.5)));
        }
    }

    /** Returns where the step of a number stands on the canvas. */
    public Optional<Rectangle> bounds(int number) {
        return Optional.ofNullable(sheet.steps().get(number));
    }

    /** Returns where the heading stands that unfolds why the step of a number stands there; of 0 why the whole order. */
    public Optional<Rectangle> foldOf(int number) {
        return number == 0 ? Optional.ofNullable(sheet.folds().get(Folds.ORDER))
                : planned.plan().rungs().stream().filter(rung -> rung.number() == number).findFirst()
                        .map(rung -> sheet.folds().get(Folds.of(rung)));
    }

    /** Returns all words of the ladder as it is shown. */
    public String words() {
        return sheet.words();
    }

    /** Returns the step that is selected. */
    public Optional<Rung> selected() {
        return planned == null ? Optional.empty()
                : planned.plan().rungs().stream().filter(rung -> rung.number() == selected).findFirst();
    }

    /** Tells those who cannot see it which step is selected. */
    private final class Words extends AccessibleAdapter {

        @Override
        public void getName(AccessibleEvent event) {
            event.result = selected().map(rung -> planned.words().rungs().heading(rung)).orElse("No step");
        }

        @Override
        public void getDescription(AccessibleEvent event) {
            event.result = selected().map(rung -> String.join(". ", planned.words().rungs().marks(rung)) + " "
                    + String.join(". ", rung.move().advice().cautions()) + " " + rung.move().advice().stop())
                    .orElse("");
        }
    }
}
