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

    /** The editor of rule sets. */
    public static final String RULES_EDITOR = "org.ferrule.ui.rules";

    /** The welcome page. */
    public static final String WELCOME = "org.ferrule.ui.welcome";

    /** The help view. */
    public static final String HELP = "org.ferrule.ui.help";

    /** The command that opens the demo. */
    public static final String OPEN_DEMO = "org.ferrule.ui.openDemo";

    private WorkbenchIds() {
    }
}
