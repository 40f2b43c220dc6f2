/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EReference;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DeviceParts;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentSession;

/** The rows of all devices, or all lines, of a library; rows that no change concerns are kept. */
final class DeviceRows {

    private final DocumentSession session;
    private final EReference feature;
    private Map<DeviceParts, DeviceRow> known = new IdentityHashMap<>();

    /**
     * Creates the rows.
     *
     * @param feature the devices or the lines of a library
     */
    DeviceRows(DocumentSession session, EReference feature) {
        this.session = session;
        this.feature = feature;
    }

    List<DeviceRow> all() {
        DeviceLibrary library = (DeviceLibrary) session.document().orElseThrow();
        Map<String, DeviceLine> lines = new HashMap<>();
        library.getLines().forEach(line -> lines.putIfAbsent(line.getId(), line));
        List<DeviceRow> rows = ((List<?>) library.eGet(feature)).stream().map(DeviceParts.class::cast)
                .map(parts -> row(parts, lines)).toList();
        known = new IdentityHashMap<>();
        rows.forEach(row -> known.put(row.parts(), row));
        return rows;
    }

    private DeviceRow row(DeviceParts parts, Map<String, DeviceLine> lines) {
        DeviceLine line = parts instanceof Device device ? lines.get(device.getLine()) : null;
        DeviceRow row = known.get(parts);
        return row != null && row.line() == line ? row : new DeviceRow(parts, line);
    }

    /** Forgets what a change concerns. */
    void forget(DocumentChange change) {
        if (change.reloaded()) {
            known.clear();
        }
        known.values().removeIf(
                row -> change.concerns(row.parts()) || row.line() != null && change.concerns(row.line()));
    }
}
