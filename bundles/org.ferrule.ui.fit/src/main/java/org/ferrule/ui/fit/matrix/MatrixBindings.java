/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.eclipse.nebula.widgets.nattable.config.AbstractUiBindingConfiguration;
import org.eclipse.nebula.widgets.nattable.ui.binding.UiBindingRegistry;
import org.eclipse.nebula.widgets.nattable.ui.matcher.MouseEventMatcher;
import org.eclipse.swt.SWT;

/** A click on a head sorts by its line, one on the head of a group folds it; a head that is dragged moves its line. */
final class MatrixBindings extends AbstractUiBindingConfiguration {

    private final MatrixTable matrix;

    MatrixBindings(MatrixTable matrix) {
        this.matrix = matrix;
    }

    @Override
    public void configureUiBindings(UiBindingRegistry bindings) {
        bindings.registerFirstSingleClickBinding(MouseEventMatcher.columnHeaderLeftClick(SWT.NONE),
                (table, event) -> matrix.lines().sortAt(matrix.side(false), event.x, event.y));
        bindings.registerFirstSingleClickBinding(MouseEventMatcher.rowHeaderLeftClick(SWT.NONE),
                (table, event) -> matrix.lines().sortAt(matrix.side(true), event.x, event.y));
        bindings.registerFirstSingleClickBinding(MouseEventMatcher.columnGroupHeaderLeftClick(SWT.NONE),
                (table, event) -> matrix.lines().foldAt(matrix.side(false), event.x, event.y));
        bindings.registerFirstSingleClickBinding(MouseEventMatcher.rowGroupHeaderLeftClick(SWT.NONE),
                (table, event) -> matrix.lines().foldAt(matrix.side(true), event.x, event.y));
        bindings.registerFirstMouseDownBinding(MouseEventMatcher.columnHeaderLeftClick(SWT.NONE),
                new HeadPress(matrix, false));
        bindings.registerFirstMouseDownBinding(MouseEventMatcher.rowHeaderLeftClick(SWT.NONE),
                new HeadPress(matrix, true));
        bindings.registerFirstMouseDragMode(MouseEventMatcher.columnHeaderLeftClick(SWT.NONE),
                new LineDrag(matrix, false));
        bindings.registerFirstMouseDragMode(MouseEventMatcher.rowHeaderLeftClick(SWT.NONE),
                new LineDrag(matrix, true));
    }
}
