/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.fix;

import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.ferrule.quantity.DimensionRepair;
import org.ferrule.ui.edit.field.DimensionField;

/** Offers what the dimension in the field with the cursor could mean instead. */
public class FixAtField extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        Control focus = Display.getCurrent().getFocusControl();
        DimensionField.of(focus).ifPresent(field -> offer(focus, field));
        return null;
    }

    private static void offer(Control control, DimensionField field) {
        List<DimensionRepair> repairs = field.repairs();
        new FixPopup(control, repairs, field::take).open();
    }
}
