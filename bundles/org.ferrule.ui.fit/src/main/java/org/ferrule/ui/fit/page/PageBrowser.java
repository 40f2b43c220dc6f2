/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.page;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.ferrule.picture.Picture;
import org.ferrule.ui.look.ThemeChange;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;

/** Shows one page at a time, as a whole or as wide as there is room. Page Up and Page Down turn the pages. */
public final class PageBrowser {

    private static final int SCROLL_PIXELS = 40;

    private final Composite control;
    private final ToolItem back;
    private final ToolItem forward;
    private final ToolItem wide;
    private final Label place;
    private final ScrolledComposite scroller;
    private final PictureCanvas canvas;
    private List<Picture> pages = List.of();
    private int page;

    /**
     * Creates the browser.
     *
     * @param export is run when the user wants the pages in files
     */
    public PageBrowser(Composite parent, Runnable export) {
        control = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(control);
        ToolBar bar = toolBar();
        back = item(bar, SWT.PUSH, "Previous page", () -> turnTo(page - 1));
        forward = item(bar, SWT.PUSH, "Next page", () -> turnTo(page + 1));
        new ToolItem(bar, SWT.SEPARATOR);
        wide = item(bar, SWT.CHECK, "Fit width", this::lay);
        place = new Label(control, SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(place);
        item(toolBar(), SWT.PUSH, "Export...", export);
        scroller = new ScrolledComposite(control, SWT.V_SCROLL | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).applyTo(scroller);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        canvas = new PictureCanvas(scroller);
        scroller.setContent(canvas);
        scroller.addListener(SWT.Resize, event -> lay());
        canvas.ownedBy(() -> PictureOwner.PAGE);
        canvas.addListener(SWT.KeyDown, this::key);
        bar.addListener(SWT.KeyDown, this::key);
    }

    private ToolBar toolBar() {
        ToolBar bar = new ToolBar(control, SWT.FLAT | SWT.RIGHT);
        ThemeChange.ground(bar);
        return bar;
    }

    private static ToolItem item(ToolBar bar, int style, String text, Runnable work) {
        ToolItem item = new ToolItem(bar, style);
        item.setText(text);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        return item;
    }

    private void key(Event event) {
        if (event.keyCode == SWT.PAGE_DOWN) {
            turnTo(page + 1);
        } else if (event.keyCode == SWT.PAGE_UP) {
            turnTo(page - 1);
        } else if (event.keyCode == SWT.ARROW_DOWN) {
            scroll(SCROLL_PIXELS);
        } else if (event.keyCode == SWT.ARROW_UP) {
            scroll(-SCROLL_PIXELS);
        }
    }

    private void scroll(int pixels) {
        if (!canvas.zoom().isZoomed()) {
            scroller.setOrigin(0, scroller.getOrigin().y + pixels);
        }
    }

    /** Returns the widget. */
    public Control control() {
        return control;
    }

    /** Returns the pages that can be turned to. */
    public List<Picture> pages() {
        return pages;
    }

    /** Shows other pages; stays at the page that is looked at, if there is one. */
    public void show(List<Picture> next) {
        pages = List.copyOf(next);
        turnTo(page);
    }

    /** Shows nothing but some words. */
    public void clear(String words) {
        pages = List.of();
        place.setText("");
        canvas.clear(words);
    }

    private void turnTo(int wanted) {
        page = Math.max(0, Math.min(wanted, pages.size() - 1));
        back.setEnabled(page > 0);
        forward.setEnabled(page < pages.size() - 1);
        place.setText(pages.isEmpty() ? "" : "  page " + (page + 1) + " of " + pages.size());
        place.requestLayout();
        if (!pages.isEmpty()) {
            canvas.show(pages.get(page));
            lay();
            scroller.setOrigin(0, 0);
        }
    }

    /** As wide as there is room makes the page taller than what can be seen of it. */
    private void lay() {
        Rectangle room = scroller.getClientArea();
        boolean tall = wide.getSelection() && !pages.isEmpty();
        int height = tall ? (int) (room.width * pages.get(page).heightMm() / pages.get(page).widthMm()) : 0;
        scroller.setMinSize(0, height);
        scroller.getVerticalBar().setIncrement(SCROLL_PIXELS);
        scroller.getVerticalBar().setPageIncrement(Math.max(1, room.height - SCROLL_PIXELS));
    }
}
