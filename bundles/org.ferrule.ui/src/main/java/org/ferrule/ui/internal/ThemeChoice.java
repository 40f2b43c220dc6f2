/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.prefs.BackingStoreException;

/** Whether the workbench is light or dark: one of them, or as the desktop is when the program starts. */
enum ThemeChoice {
    /** As the desktop. */
    SYSTEM("&As the system"),
    /** Dark on light. */
    LIGHT("&Light"),
    /** Light on dark. */
    DARK("&Dark");

    /** Where the platform keeps the theme that was chosen; nothing there means as the desktop. */
    private static final String NODE = "org.eclipse.e4.ui.css.swt.theme";
    private static final String KEY = "themeid";
    private static final String LIGHT_THEME = "org.eclipse.e4.ui.css.theme.e4_default";
    private static final String DARK_THEME = "org.eclipse.e4.ui.css.theme.e4_dark";

    private final String label;

    ThemeChoice(String label) {
        this.label = label;
    }

    /** Returns what it is called, with its letter for the keyboard. */
    String label() {
        return label;
    }

    /** Returns what is chosen. */
    static ThemeChoice chosen() {
        String theme = preferences().get(KEY, "");
        return theme.isEmpty() ? SYSTEM : theme.startsWith(DARK_THEME) ? DARK : LIGHT;
    }

    /** Chooses it, now and for later starts. The platform has no public way to do so, only this one, which its own pages use. */
    @SuppressWarnings("restriction")
    void choose() {
        IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
        String wanted = isDark() ? DARK_THEME : LIGHT_THEME;
        engine.getThemes().stream().filter(theme -> theme.getId().startsWith(wanted)).findFirst()
                .ifPresent(theme -> engine.setTheme(theme, this != SYSTEM));
        if (this == SYSTEM) {
            forget();
        }
    }

    private boolean isDark() {
        return this == DARK || this == SYSTEM && Display.isSystemDarkTheme();
    }

    private static void forget() {
        try {
            preferences().remove(KEY);
            preferences().flush();
        } catch (BackingStoreException e) {
            ILog.of(ThemeChoice.class).error("The choice of the theme cannot be kept", e);
        }
    }

    private static IEclipsePreferences preferences() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }
}
