/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Colours that follow the theme. Nobody needs to dispose of them. */
public final class Colours {

    private static final Color MUTED_ON_DARK = new Color(0x9A, 0xA0, 0xA8);

    private Colours() {
    }

    /** Returns the colour of texts that say what is wrong. */
    public static Color error() {
        return registered(JFacePreferences.ERROR_COLOR);
    }

    /** Returns the colour of texts that only accompany others. The dark theme has none that stands back. */
    public static Color muted() {
        return dark() ? MUTED_ON_DARK : registered(JFacePreferences.QUALIFIER_COLOR);
    }

    /** Returns the colour of links. */
    public static Color link() {
        return registered(JFacePreferences.HYPERLINK_COLOR);
    }

    /** Tells whether texts are light on dark: the workbench's theme may be dark on a light desktop. */
    public static boolean dark() {
        return luminance(ground().getRGB()) < 128;
    }

    private static Color ground() {
        IWorkbenchWindow window = PlatformUI.isWorkbenchRunning()
                ? PlatformUI.getWorkbench().getActiveWorkbenchWindow() : null;
        return window == null || window.getShell() == null
                ? Display.getCurrent().getSystemColor(SWT.COLOR_LIST_BACKGROUND) : window.getShell().getBackground();
    }

    private static Color registered(String name) {
        Color color = JFaceResources.getColorRegistry().get(name);
        return color != null ? color : Display.getCurrent().getSystemColor(SWT.COLOR_LIST_FOREGROUND);
    }

    private static double luminance(RGB rgb) {
        return 0.299 * rgb.red + 0.587 * rgb.green + 0.114 * rgb.blue;
    }
}
