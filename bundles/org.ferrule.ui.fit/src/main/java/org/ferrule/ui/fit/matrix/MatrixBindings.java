/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.eclipse.nebula.widgets.nattable.config.AbstractUiBindingConfiguration;
import org.eclipse.nebula.widgets.nattable.ui.binding.UiBindingRegistry;
import org.eclipse.nebula.widgets.nattable.ui.matcher.MouseEventMatcher;
import org.eclipse.swt.SWT;

/** A click on a head sorts by its line. */
final class MatrixBindings extends AbstractUiBindingConfiguration {

    private final MatrixTable matrix;

    MatrixBindings(MatrixTable matrix) {
        this.matrix = matrix;
    }

    @Override
    public void configureUiBindings(UiBindingRegistry bindings) {
        bindings.registerFirstMouseDownBinding(MouseEventMatcher.columnHeaderLeftClick(SWT.NONE),
                (table, event) -> matrix.sortAt(Side.INNER, event.x, event.y));
        bindings.registerFirstMouseDownBinding(MouseEventMatcher.rowHeaderLeftClick(SWT.NONE),
                (table, event) -> matrix.sortAt(Side.OUTER, event.x, event.y));
    }
}
