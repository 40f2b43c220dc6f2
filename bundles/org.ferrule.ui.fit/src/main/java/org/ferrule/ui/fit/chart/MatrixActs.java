/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.FitIds;
import org.ferrule.ui.fit.matrix.MatrixContent;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.matrix.Side;

/** What can be done with the matrix by commands, and so by keys. */
final class MatrixActs {

    private final MatrixPage page;
    private final MatrixTable table;
    private final MatrixContent content;
    private final DocumentSession session;
    private final HiddenLines hidden;

    MatrixActs(MatrixPage page, DocumentSession session) {
        this.page = page;
        this.table = page.table();
        this.content = table.content();
        this.session = session;
        this.hidden = new HiddenLines(session);
    }

    void install(IWorkbenchPartSite site) {
        MatrixCommands commands = new MatrixCommands(site);
        commands.whileFocused(IWorkbenchCommandConstants.EDIT_COPY, () -> CellCopy.copy(table))
                .on(IWorkbenchCommandConstants.EDIT_FIND_AND_REPLACE, this::openSearch)
                .on(FitIds.FIND_NEXT, () -> page.search().step(1))
                .on(FitIds.FIND_PREVIOUS, () -> page.search().step(-1))
                .on(FitIds.SHOW_CARD, () -> page.card().showSelected()).on(FitIds.SHOW_BESIDE, this::switchBeside)
                .on(FitIds.SHOW_CHANGES, () -> page.changes().showNext())
                .on(FitIds.SHOW_SUMS, () -> table.showSums(!content.sums().shown()), page.bar()::showTools)
                .on(FitIds.SORT_ROWS, () -> table.lines().sortBySums(content.rowSide()), page.bar()::showTools)
                .on(FitIds.SORT_COLUMNS, () -> table.lines().sortBySums(columnSide()), page.bar()::showTools);
        addLines(commands);
        commands.follow(table.control());
    }

    private void addLines(MatrixCommands commands) {
        commands.on(FitIds.TRANSPOSE, table.lines()::transpose)
                .on(FitIds.FOLD_ROWS, () -> table.lines().foldSelected(content.rowSide()))
                .on(FitIds.FOLD_COLUMNS, () -> table.lines().foldSelected(columnSide()))
                .on(FitIds.PIN_ROW, () -> table.lines().pinSelected(content.rowSide()))
                .on(FitIds.PIN_COLUMN, () -> table.lines().pinSelected(columnSide()))
                .on(FitIds.HIDE_ROW, () -> hide(content.rowSide())).on(FitIds.HIDE_COLUMN, () -> hide(columnSide()))
                .on(FitIds.MOVE_UP, () -> table.lines().moveSelected(content.rowSide(), -1))
                .on(FitIds.MOVE_DOWN, () -> table.lines().moveSelected(content.rowSide(), 1))
                .on(FitIds.MOVE_LEFT, () -> table.lines().moveSelected(columnSide(), -1))
                .on(FitIds.MOVE_RIGHT, () -> table.lines().moveSelected(columnSide(), 1));
    }

    private Side columnSide() {
        return content.rowSide().other();
    }

    private void hide(Side side) {
        table.selection().position(side).ifPresent(position -> {
            if (!content.axis(side).isFolded(position) && session.editable()) {
                hidden.hide(side, content.axis(side).line(position));
            }
        });
    }

    private void openSearch() {
        page.getEditor().setActivePage(MatrixPage.ID);
        page.search().open();
    }

    /** The focus goes along, so that the next key is for what has been opened. */
    private void switchBeside() {
        page.bar().showBeside(!page.side().isOpen());
        if (page.side().isOpen()) {
            page.side().setFocus();
        } else {
            page.setFocus();
        }
    }
}
