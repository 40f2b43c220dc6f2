/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import org.eclipse.swt.widgets.Shell;
import org.ferrule.ui.document.DocumentSession;

/**
 * Looks at a document that is about to be saved, and may show the user what that would do. Contributed through the
 * extension point {@code org.ferrule.ui.saveChecks}.
 */
public interface SaveCheck {

    /**
     * Tells whether to go on with saving. Called on the display's thread.
     *
     * @param session the document, with all that was typed
     * @param shell above which to ask
     */
    boolean maySave(DocumentSession session, Shell shell);
}
