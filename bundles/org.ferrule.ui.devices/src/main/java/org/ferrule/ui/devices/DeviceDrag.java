/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.Transfer;

/** Lets whole rows be dragged by their heads to where devices are taken. */
final class DeviceDrag extends DragSourceAdapter {

    private final LocalSelectionTransfer transfer = LocalSelectionTransfer.getTransfer();
    private final NatTable table;
    private final SelectedDevices devices;

    private DeviceDrag(NatTable table, SelectedDevices devices) {
        this.table = table;
        this.devices = devices;
    }

    static void from(NatTable table, SelectedDevices devices) {
        DeviceDrag drag = new DeviceDrag(table, devices);
        table.addDragSupport(DND.DROP_COPY, new Transfer[] { drag.transfer }, drag);
    }

    @Override
    public void dragStart(DragSourceEvent event) {
        var regions = table.getRegionLabelsByXY(event.x, event.y);
        event.doit = regions != null && regions.hasLabel(GridRegion.ROW_HEADER) && !devices.all().isEmpty();
        if (event.doit) {
            transfer.setSelection(new StructuredSelection(devices.all()));
        }
    }

    @Override
    public void dragSetData(DragSourceEvent event) {
        event.data = transfer.getSelection();
    }

    @Override
    public void dragFinished(DragSourceEvent event) {
        transfer.setSelection(null);
    }
}
