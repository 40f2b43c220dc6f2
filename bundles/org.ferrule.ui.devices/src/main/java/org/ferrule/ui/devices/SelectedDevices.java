/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.List;
import java.util.function.Predicate;

import org.ferrule.model.Device;
import org.ferrule.model.DeviceResolution;
import org.ferrule.ui.devices.grid.SheetGrid;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.document.DocumentSession;

/** What is selected in the table, as other parts of the workbench know it. Lines are no devices. */
final class SelectedDevices {

    private final DocumentSession session;
    private final SheetGrid grid;

    SelectedDevices(DocumentSession session, SheetGrid grid) {
        this.session = session;
        this.grid = grid;
    }

    List<DeviceReference> all() {
        return references(device -> true);
    }

    /** Returns those with a balloon, of their own or of their line. */
    List<DeviceReference> balloons() {
        return references(device -> DeviceResolution.resolve(device).device().getBalloon() != null);
    }

    private List<DeviceReference> references(Predicate<Device> which) {
        return grid.selection().rows().stream().map(SheetRow::parts).filter(Device.class::isInstance)
                .map(Device.class::cast).filter(device -> device.getId() != null).filter(which)
                .map(device -> new DeviceReference(session.file(), device.getId())).toList();
    }
}
