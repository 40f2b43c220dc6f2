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

/** Colours that follow the theme. Nobody needs to dispose of them. */
public final class Colours {

    private Colours() {
    }

    /** Returns the colour of texts that say what is wrong. */
    public static Color error() {
        return registered(JFacePreferences.ERROR_COLOR);
    }

    /** Returns the colour of texts that only accompany others. */
    public static Color muted() {
        return registered(JFacePreferences.QUALIFIER_COLOR);
    }

    /** Returns the colour of links. */
    public static Color link() {
        return registered(JFacePreferences.HYPERLINK_COLOR);
    }

    /** Tells whether texts are light on dark. */
    public static boolean dark() {
        return luminance(Display.getCurrent().getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB()) < 128;
    }

    private static Color registered(String name) {
        Color color = JFaceResources.getColorRegistry().get(name);
        return color != null ? color : Display.getCurrent().getSystemColor(SWT.COLOR_LIST_FOREGROUND);
    }

    private static double luminance(RGB rgb) {
        return 0.299 * rgb.red + 0.587 * rgb.green + 0.114 * rgb.blue;
    }
}
