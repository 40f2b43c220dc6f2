/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.core.resources.IFile;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.ferrule.picture.Caption;
import org.ferrule.ui.picture.PictureItems;
import org.ferrule.ui.picture.PictureOwner;

/** The menu of the ladder: the drawing of the selected step, copied or saved. */
final class StepMenu {

    private static final String CAUTION = "The instructions for use and the judgement of the operator decide.";

    private final LadderCanvas ladder;

    /**
     * Installs the menu.
     *
     * @param file the case, beside which pictures are offered to be saved
     */
    StepMenu(LadderCanvas ladder, IFile file) {
        this.ladder = ladder;
        Control canvas = ladder.canvas();
        Menu menu = new Menu(canvas);
        PictureOwner owner = PictureOwner.of(Caption.of("", "Case: " + file.getName(), CAUTION)).in(file.getParent());
        PictureItems.add(menu, canvas, ladder::picture, () -> owner);
        canvas.setMenu(menu);
        canvas.addListener(SWT.MenuDetect, this::select);
    }

    /** The menu is about what lies under the mouse, as elsewhere. */
    private void select(Event event) {
        if (event.detail == SWT.MENU_MOUSE) {
            Point at = ladder.canvas().toControl(event.x, event.y);
            ladder.selectAt(at.x, at.y);
        }
    }
}
