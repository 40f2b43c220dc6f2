/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import org.eclipse.core.expressions.EvaluationResult;
import org.eclipse.core.expressions.Expression;
import org.eclipse.core.expressions.ExpressionInfo;
import org.eclipse.core.expressions.IEvaluationContext;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.ISources;

/** Holds while a control has the focus, and outranks what holds for its part. */
public final class Focused extends Expression {

    private final Control control;

    /** Holds while that control has the focus. */
    public Focused(Control control) {
        this.control = control;
    }

    @Override
    public void collectExpressionInfo(ExpressionInfo info) {
        info.addVariableNameAccess(ISources.ACTIVE_FOCUS_CONTROL_NAME);
        info.addVariableNameAccess(ISources.ACTIVE_SITE_NAME);
        info.addVariableNameAccess(ISources.ACTIVE_CURRENT_SELECTION_NAME);
    }

    @Override
    public EvaluationResult evaluate(IEvaluationContext context) {
        return EvaluationResult.valueOf(!control.isDisposed() && control.isFocusControl());
    }
}
