/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.help;

import java.io.IOException;
import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.ListViewer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.events.MouseListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;
import org.ferrule.ui.help.HelpPage;
import org.ferrule.ui.help.HelpPages;

/** Shows the help: its contents, and one of its pages. */
public class HelpView extends ViewPart {

    /** The id of the view. */
    public static final String ID = "org.ferrule.ui.help";

    private static final int MARGIN = 16;

    private ListViewer contents;
    private StyledText text;
    private PagePainter painter;
    private HelpPage shown;

    @Override
    public void createPartControl(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        contents = new ListViewer(sash, SWT.SINGLE | SWT.V_SCROLL);
        contents.setContentProvider(ArrayContentProvider.getInstance());
        contents.setLabelProvider(LabelProvider.createTextProvider(page -> ((HelpPage) page).title()));
        contents.addSelectionChangedListener(event -> selected(event.getStructuredSelection()));
        createText(sash);
        sash.setWeights(28, 72);
        List<HelpPage> pages = HelpPages.all();
        contents.setInput(pages);
        showPage(HelpPages.FIRST);
    }

    private void createText(Composite parent) {
        text = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.MULTI);
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setCaret(null);
        painter = new PagePainter(text);
        text.addMouseListener(MouseListener.mouseUpAdapter(this::follow));
        text.addMouseMoveListener(event -> text.setCursor(
                linkAt(event).isEmpty() ? null : text.getDisplay().getSystemCursor(SWT.CURSOR_HAND)));
    }

    private String linkAt(MouseEvent event) {
        int offset = text.getOffsetAtPoint(new Point(event.x, event.y));
        return offset < 0 ? "" : painter.linkAt(offset).orElse("");
    }

    private void follow(MouseEvent event) {
        String target = linkAt(event);
        if (target.contains(":")) {
            Program.launch(target);
        } else if (!target.isEmpty()) {
            showPage(shown.id().substring(0, shown.id().lastIndexOf('/') + 1) + target);
        }
    }

    private void selected(IStructuredSelection selection) {
        if (selection.getFirstElement() instanceof HelpPage page && page != shown) {
            show(page);
        }
    }

    /** Shows the page with the id; the one that is shown stays if there is none. */
    public void showPage(String id) {
        HelpPages.find(id).ifPresent(page -> {
            show(page);
            contents.setSelection(new StructuredSelection(page), true);
        });
    }

    private void show(HelpPage page) {
        try {
            RichText read = PageReader.read(page.location());
            shown = page;
            painter.paint(read);
            showTop();
        } catch (IOException e) {
            ILog.of(HelpView.class).error("The help page " + page.id() + " cannot be shown", e);
            text.setText("The page \u201c" + page.title() + "\u201d cannot be shown: " + e.getMessage());
        }
    }

    /** How high lines and pictures are is known when the page is painted, which may move it once more. */
    private void showTop() {
        text.setTopPixel(0);
        text.getDisplay().asyncExec(() -> {
            if (!text.isDisposed()) {
                text.setTopPixel(0);
            }
        });
    }

    @Override
    public void setFocus() {
        contents.getControl().setFocus();
    }
}
