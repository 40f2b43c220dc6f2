/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.model.Grouping;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.CompareProfiles;
import org.ferrule.ui.edit.Reveal;
import org.ferrule.ui.fit.matrix.MatrixLine;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.matrix.Side;

/** The menu of the matrix: about the row and the column under the pointer. */
final class MatrixMenu {

    private final MatrixTable table;
    private final MatrixBar bar;
    private final DocumentSession session;
    private final HiddenLines hidden;
    private Point at = new Point(0, 0);

    MatrixMenu(MatrixTable table, MatrixBar bar, DocumentSession session) {
        this.table = table;
        this.bar = bar;
        this.session = session;
        this.hidden = new HiddenLines(session);
    }

    void install() {
        MenuManager manager = new MenuManager();
        manager.setRemoveAllWhenShown(true);
        manager.addMenuListener(this::fill);
        table.control().addMenuDetectListener(event -> at = table.control().toControl(event.x, event.y));
        table.control().setMenu(manager.createContextMenu(table.control()));
    }

    private void fill(IMenuManager menu) {
        for (Side side : Side.values()) {
            int position = table.positionAt(side, at.x, at.y);
            if (position >= 0) {
                addLine(menu, side, position);
            }
        }
        for (Side side : Side.values()) {
            addHidden(menu, side);
            menu.add(grouping(side));
        }
        menu.add(action("Exchange rows and columns", table.lines()::transpose));
        menu.add(action("Stand as in the chart, without filters", this::asInChart));
        menu.add(action("Copy", () -> CellCopy.copy(table)));
    }

    private IMenuManager grouping(Side side) {
        MenuManager groups = new MenuManager("Group " + side.word() + "s");
        LineGrouping grouping = new LineGrouping(session, side);
        for (Grouping by : Grouping.values()) {
            Action action = action(by == Grouping.NONE ? "Not at all" : "By " + by.getLiteral(), () -> grouping.by(by));
            action.setChecked(grouping.now() == by);
            action.setEnabled(session.editable());
            groups.add(action);
        }
        groups.add(new Separator());
        groups.add(action("Fold all", () -> table.lines().foldAll(side, true)));
        groups.add(action("Unfold all", () -> table.lines().foldAll(side, false)));
        return groups;
    }

    private void addLine(IMenuManager menu, Side side, int position) {
        MatrixLine line = table.content().axis(side).line(position);
        if (!line.head().group().isEmpty()) {
            boolean folded = table.content().axis(side).isFolded(position);
            menu.add(action((folded ? "Unfold " : "Fold ") + line.head().group(),
                    () -> table.lines().fold(side, position)));
        }
        if (!table.content().axis(side).isFolded(position)) {
            addLine(menu, side, line);
        }
        menu.add(new Separator());
    }

    private void addLine(IMenuManager menu, Side side, MatrixLine line) {
        menu.add(action("Open " + line.head().title(), () -> open(line)));
        Action hide = action("Hide " + line.head().title(), () -> hidden.hide(side, line));
        hide.setEnabled(session.editable());
        menu.add(hide);
        boolean pinned = table.content().axis(side).isPinned(line.key());
        menu.add(action((pinned ? "Unpin " : "Pin ") + line.head().title(), () -> table.lines().pin(side, line.key())));
        menu.add(new CompareProfiles(() -> reference(line).stream().toList()));
    }

    private void addHidden(IMenuManager menu, Side side) {
        int count = hidden.of(side).size();
        if (count > 0) {
            Action show = action("Show " + count + " hidden " + side.word() + (count > 1 ? "s" : ""),
                    () -> hidden.showAll(side));
            show.setEnabled(session.editable());
            menu.add(show);
        }
    }

    private void open(MatrixLine line) {
        reference(line).ifPresent(device -> open(device.library(), "devices[" + device.id() + "]"));
    }

    private Optional<DeviceReference> reference(MatrixLine line) {
        String reference = LumenReference.parse(line.key()).device();
        int mark = reference.indexOf('!');
        return DocumentFiles.resolve(session.file(), reference.substring(0, mark)).filter(IFile::exists)
                .map(file -> new DeviceReference(file, reference.substring(mark + 1)));
    }

    private static void open(IFile file, String path) {
        try {
            Reveal.open(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), file, path);
        } catch (PartInitException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
        }
    }

    private void asInChart() {
        table.content().asInChart();
        bar.showFilters();
        table.refresh();
    }

    private static Action action(String text, Runnable work) {
        return new Action(text.replace("&", "&&"), IAction.AS_UNSPECIFIED) {
            @Override
            public void run() {
                work.run();
            }
        };
    }
}
