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

    /** The platform's red is hardly read as small letters on white. */
    private static final Color ERROR_ON_LIGHT = new Color(0xB4, 0x23, 0x18);
    private static final Color MUTED_ON_DARK = new Color(0x9A, 0xA0, 0xA8);
    /** What the platform's dark theme gives tables and trees. */
    private static final Color DARK_PAPER = new Color(0x2F, 0x2F, 0x2F);
    private static final Color TEXT_ON_DARK = new Color(0xE0, 0xE0, 0xE0);

    private Colours() {
    }

    /** Returns the colour of texts that say what is wrong. */
    public static Color error() {
        return dark() ? registered(JFacePreferences.ERROR_COLOR) : ERROR_ON_LIGHT;
    }

    /** Returns the colour of texts that only accompany others. The dark theme has none that stands back. */
    public static Color muted() {
        return dark() ? MUTED_ON_DARK : registered(JFacePreferences.QUALIFIER_COLOR);
    }

    /** Returns the colour of links. */
    public static Color link() {
        return registered(JFacePreferences.HYPERLINK_COLOR);
    }

    /** Returns the ground of what paints itself like a table. The system's own may be light while the theme is dark. */
    public static Color paper() {
        Color system = system(SWT.COLOR_LIST_BACKGROUND);
        boolean dark = dark();
        return isDark(system) == dark ? system : dark ? DARK_PAPER : system(SWT.COLOR_WHITE);
    }

    /** Returns the colour of texts on {@link #paper}. */
    public static Color text() {
        Color system = system(SWT.COLOR_LIST_FOREGROUND);
        boolean dark = dark();
        return isDark(system) != dark ? system : dark ? TEXT_ON_DARK : system(SWT.COLOR_BLACK);
    }

    /** Returns the colour by which the system marks what is selected. */
    public static Color selection() {
        return system(SWT.COLOR_LIST_SELECTION);
    }

    /**
     * Returns {@link #paper} with something of another colour in it.
     *
     * @param percent how much of the other colour, from 0 to 100
     */
    public static Color tinted(Color other, int percent) {
        Color paper = paper();
        return new Color(mix(paper.getRed(), other.getRed(), percent), mix(paper.getGreen(), other.getGreen(), percent),
                mix(paper.getBlue(), other.getBlue(), percent));
    }

    private static int mix(int paper, int other, int percent) {
        return (paper * (100 - percent) + other * percent) / 100;
    }

    /** Tells whether texts are light on dark: the workbench's theme may be dark on a light desktop. */
    public static boolean dark() {
        return isDark(ground());
    }

    private static boolean isDark(Color color) {
        return luminance(color.getRGB()) < 128;
    }

    private static Color system(int id) {
        return Display.getCurrent().getSystemColor(id);
    }

    private static Color ground() {
        IWorkbenchWindow window = PlatformUI.isWorkbenchRunning()
                ? PlatformUI.getWorkbench().getActiveWorkbenchWindow() : null;
        return window == null || window.getShell() == null
                ? system(SWT.COLOR_LIST_BACKGROUND) : window.getShell().getBackground();
    }

    private static Color registered(String name) {
        Color color = JFaceResources.getColorRegistry().get(name);
        return color != null ? color : system(SWT.COLOR_LIST_FOREGROUND);
    }

    private static double luminance(RGB rgb) {
        return 0.299 * rgb.red + 0.587 * rgb.green + 0.114 * rgb.blue;
    }
}
