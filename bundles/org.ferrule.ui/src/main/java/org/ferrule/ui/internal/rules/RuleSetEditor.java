/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.rules;

import org.eclipse.jface.viewers.ILabelProvider;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.contents.ContentsPage;

/** Edits a rule set. */
public class RuleSetEditor extends DocumentEditor {

    /** The id of the editor. */
    public static final String ID = "org.ferrule.ui.rules";

    @Override
    protected void addDocumentPages() throws PartInitException {
        addPage(new ContentsPage(this, "rules", "Rules", new RuleLabels(session().adapters())));
    }

    @Override
    protected ILabelProvider outlineLabels() {
        return new RuleLabels(session().adapters());
    }
}
