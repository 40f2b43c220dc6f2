/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** Works on trees with the mouse. */
public final class Trees {
    /** Where the sign for opening may lie left of an item: GTK tells the place of its text, or of its image. */
    private static final int[] SIGN_LEFT = { 14, 30, 8, 22 };

    private Trees() {
    }

    /** Opens the item by a click on the sign before it. */
    public static void expand(Robot robot, TreeItem item) {
        int[] tries = new int[1];
        robot.waitFor("an open " + item.getText(), () -> {
            if (!item.getExpanded()) {
                Rectangle at = item.getBounds(0);
                robot.click(item.getParent(), Math.max(4, at.x - SIGN_LEFT[tries[0]++ % SIGN_LEFT.length]),
                        at.y + at.height / 2);
                robot.pause(200);
            }
            return item.getExpanded();
        });
    }

    /** Selects the item by a click; again where the tree was still moving. */
    public static void click(Robot robot, TreeItem item) {
        Tree tree = item.getParent();
        robot.waitFor("a selected " + item.getText(), () -> {
            Rectangle at = item.getBounds(0);
            robot.click(tree, at.x + 12, at.y + at.height / 2);
            return List.of(tree.getSelection()).contains(item);
        });
    }

    /** Returns all items of the tree that are made, at any depth. */
    public static Stream<TreeItem> items(Tree tree) {
        return Stream.of(tree.getItems()).flatMap(Trees::withChildren);
    }

    private static Stream<TreeItem> withChildren(TreeItem item) {
        return Stream.concat(Stream.of(item), Stream.of(item.getItems()).flatMap(Trees::withChildren));
    }
}
