/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.SaveCheck;

/** Shows, before a document is saved, the verdicts that change with it; says nothing when none does. */
public final class EffectCheck implements SaveCheck {

    @Override
    public boolean maySave(DocumentSession session, Shell shell) {
        if (!EffectPreference.isShown() || !session.editable()) {
            return true;
        }
        try {
            EditEffect effect = EditEffect.of(session);
            return effect.changes().isEmpty() || new EffectDialog(shell, effect, true).open() == Window.OK;
        } catch (OperationCanceledException e) {
            return false;
        }
    }
}
