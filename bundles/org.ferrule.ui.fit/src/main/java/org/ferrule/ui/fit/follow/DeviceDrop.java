/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.follow;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.widgets.Control;
import org.ferrule.ui.document.DeviceReference;

/** Takes devices that are dragged from where they are listed: from the explorer, or by the heads of rows of a library. */
public final class DeviceDrop extends DropTargetAdapter {

    private static final int OPERATIONS = DND.DROP_DEFAULT | DND.DROP_COPY | DND.DROP_MOVE | DND.DROP_LINK;

    private final LocalSelectionTransfer transfer = LocalSelectionTransfer.getTransfer();
    private final Consumer<List<DeviceReference>> taker;

    private DeviceDrop(Consumer<List<DeviceReference>> taker) {
        this.taker = taker;
    }

    /** Lets devices be dropped onto a control and what it holds. */
    public static void onto(Control control, Consumer<List<DeviceReference>> taker) {
        DropTarget target = new DropTarget(control, OPERATIONS);
        DeviceDrop drop = new DeviceDrop(taker);
        target.setTransfer(drop.transfer);
        target.addDropListener(drop);
    }

    private List<DeviceReference> devices() {
        return transfer.getSelection() instanceof IStructuredSelection selection ? AskedDevices.of(selection)
                : List.of();
    }

    @Override
    public void dragEnter(DropTargetEvent event) {
        accept(event);
    }

    @Override
    public void dragOperationChanged(DropTargetEvent event) {
        accept(event);
    }

    /** Devices are never moved away from their library. */
    private void accept(DropTargetEvent event) {
        event.detail = devices().isEmpty() ? DND.DROP_NONE : DND.DROP_COPY;
    }

    @Override
    public void drop(DropTargetEvent event) {
        List<DeviceReference> dropped = devices();
        event.detail = dropped.isEmpty() ? DND.DROP_NONE : DND.DROP_COPY;
        if (!dropped.isEmpty()) {
            taker.accept(dropped);
        }
    }
}
