/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Display;

/** The lettering of a ladder in one size; to be disposed of. */
final class LadderFonts {

    private final int points;
    private final Font name;
    private final Font text;
    private final Font strong;
    private final Font small;
    private final Font smallStrong;

    LadderFonts(Display display, int points) {
        this.points = points;
        FontDescriptor base = JFaceResources.getDefaultFontDescriptor();
        name = base.setHeight(Math.round(points * 1.3f)).setStyle(SWT.BOLD).createFont(display);
        text = base.setHeight(points).setStyle(SWT.NORMAL).createFont(display);
        strong = base.setHeight(points).setStyle(SWT.BOLD).createFont(display);
        FontDescriptor smaller = base.setHeight(Math.max(9, Math.round(points * 0.82f)));
        small = smaller.setStyle(SWT.NORMAL).createFont(display);
        smallStrong = smaller.setStyle(SWT.BOLD).createFont(display);
    }

    /** Names of steps. */
    Font name() {
        return name;
    }

    /** Running text. */
    Font text() {
        return text;
    }

    /** Text that stands out. */
    Font strong() {
        return strong;
    }

    /** Text that accompanies other text. */
    Font small() {
        return small;
    }

    /** Text that accompanies other text, and stands out. */
    Font smallStrong() {
        return smallStrong;
    }

    /** Returns a distance that grows with the lettering, in pixels. */
    int space(double lines) {
        return (int) Math.round(points * lines * 1.4);
    }

    void dispose() {
        name.dispose();
        text.dispose();
        strong.dispose();
        small.dispose();
        smallStrong.dispose();
    }
}
