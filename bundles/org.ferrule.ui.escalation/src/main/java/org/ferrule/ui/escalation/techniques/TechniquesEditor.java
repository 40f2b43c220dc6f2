/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.techniques;

import org.eclipse.ui.PartInitException;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.contents.ContentsPage;

/** The editor of technique libraries: set-ups and techniques with their roles, needs and tries, and when to stop. */
public final class TechniquesEditor extends DocumentEditor {

    @Override
    protected void addDocumentPages() throws PartInitException {
        addPage(new ContentsPage(this, "techniques", "Techniques", new ElementLabels(session().adapters())));
    }
}
