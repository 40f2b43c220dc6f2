/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui;

/** Identifiers of what the workbench itself contributes. */
public final class WorkbenchIds {

    /** The application that opens the workbench. */
    public static final String APPLICATION = "org.ferrule.ui.application";

    /** The perspective that opens first. */
    public static final String PERSPECTIVE = "org.ferrule.ui.perspective";

    private WorkbenchIds() {
    }
}
