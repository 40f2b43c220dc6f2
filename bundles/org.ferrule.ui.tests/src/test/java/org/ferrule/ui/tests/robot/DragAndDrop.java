/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.util.stream.Stream;

import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSource;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Widget;

/**
 * Drags from one control to another. Posted events start no drag of the toolkit, for which the pointer must really be
 * held; so drag source and drop target are told what the toolkit would tell them, and the transfer between them is real.
 */
public final class DragAndDrop {

    private final Robot robot;
    private final Control from;
    private final Point at;

    /** Drags from a place of a control. */
    public DragAndDrop(Robot robot, Control from, Point at) {
        this.robot = robot;
        this.from = from;
        this.at = at;
    }

    /** Drops onto a control; returns whether the drag began and the target took it. */
    public boolean to(Control target) {
        return to(target, new Point(0, 0), DND.DROP_COPY);
    }

    /** Moves what is dragged to a place of a control; returns whether the drag began and the target took it. */
    public boolean moveTo(Control target, Point place) {
        return to(target, target.toDisplay(place), DND.DROP_MOVE);
    }

    private boolean to(Control target, Point place, int operation) {
        DragSource source = (DragSource) from.getData(DND.DRAG_SOURCE_KEY);
        if (!tell(source, DND.DragStart, at, operation).doit) {
            return false;
        }
        DropTarget drop = (DropTarget) Stream.iterate(target, control -> control != null, Control::getParent)
                .map(control -> control.getData(DND.DROP_TARGET_KEY)).filter(DropTarget.class::isInstance).findFirst()
                .orElseThrow(() -> new AssertionError("nothing can be dropped there"));
        boolean takes = tell(drop, DND.DragEnter, place, operation).detail == operation;
        if (takes) {
            tell(drop, DND.DragOver, place, operation);
            tell(drop, DND.Drop, place, operation);
        }
        tell(source, DND.DragEnd, at, operation);
        robot.settle();
        return takes;
    }

    private static Event tell(Widget widget, int type, Point place, int operation) {
        Event event = event();
        event.x = place.x;
        event.y = place.y;
        event.doit = true;
        event.detail = operation;
        widget.notifyListeners(type, event);
        return event;
    }

    /** The toolkit has a class of its own for these events and shows it to nobody. */
    private static Event event() {
        try {
            var constructor = Class.forName("org.eclipse.swt.dnd.DNDEvent", true, DND.class.getClassLoader())
                    .getDeclaredConstructor();
            constructor.setAccessible(true);
            return (Event) constructor.newInstance();
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
