/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.ui.PlatformUI;

/** Makes the workbench light or dark until it ends or is told otherwise. */
public enum Themes {
    /** Dark on light. */
    LIGHT("default"),
    /** Light on dark. */
    DARK("dark");

    private static final String THEMES = "org.eclipse.e4.ui.css.theme.e4_";

    private final String id;

    Themes(String id) {
        this.id = THEMES + id;
    }

    /** Chooses it and lets the widgets take it. */
    @SuppressWarnings("restriction")
    public void choose(Robot robot) {
        IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
        ITheme theme = engine.getThemes().stream().filter(t -> t.getId().startsWith(id)).findFirst().orElseThrow();
        engine.setTheme(theme, false);
        robot.settle();
    }
}
