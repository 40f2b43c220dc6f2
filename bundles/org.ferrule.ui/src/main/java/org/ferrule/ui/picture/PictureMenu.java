/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** The menu of a canvas: copying, saving and zooming. */
final class PictureMenu {

    PictureMenu(PictureCanvas canvas, PictureKeys keys) {
        Menu menu = new Menu(canvas);
        new PictureItems(menu, canvas, canvas::seen);
        new MenuItem(menu, SWT.SEPARATOR);
        PictureItems.item(menu, "Zoom &In\t+", () -> canvas.picture().isPresent(),
                () -> keys.zoom(PictureKeys.FACTOR));
        PictureItems.item(menu, "Zoom &Out\t-", () -> canvas.zoom().isZoomed(),
                () -> keys.zoom(1 / PictureKeys.FACTOR));
        PictureItems.item(menu, "&Fit All\t0", () -> canvas.zoom().isZoomed(), () -> canvas.zoom().fitAll());
        canvas.setMenu(menu);
    }
}
