/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Source;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentSession;

/** The rows of all devices, or all lines, of a library; rows that no change concerns are kept. */
public final class SheetRows {

    private final DocumentSession session;
    private final EReference feature;
    private Map<DeviceParts, SheetRow> known = new IdentityHashMap<>();

    /**
     * Creates the rows.
     *
     * @param feature the devices or the lines of a library
     */
    public SheetRows(DocumentSession session, EReference feature) {
        this.session = session;
        this.feature = feature;
    }

    /** Returns all rows, in the order of the document. */
    public List<SheetRow> all() {
        DeviceLibrary library = (DeviceLibrary) session.document().orElseThrow();
        Map<String, DeviceLine> lines = new HashMap<>();
        library.getLines().forEach(line -> lines.putIfAbsent(line.getId(), line));
        Map<String, Source> sources = new HashMap<>();
        library.getSources().forEach(source -> sources.putIfAbsent(source.getId(), source));
        List<SheetRow> rows = ((List<?>) library.eGet(feature)).stream().map(DeviceParts.class::cast)
                .map(parts -> row(parts, lines, sources)).toList();
        known = new IdentityHashMap<>();
        rows.forEach(row -> known.put(row.parts(), row));
        return rows;
    }

    private SheetRow row(DeviceParts parts, Map<String, DeviceLine> lines, Map<String, Source> sources) {
        DeviceLine line = parts instanceof Device device ? lines.get(device.getLine()) : null;
        String cited = parts.getSource() == null && line != null ? line.getSource() : parts.getSource();
        Source source = sources.get(cited);
        SheetRow row = known.get(parts);
        boolean same = row != null && row.line().orElse(null) == line && row.source().orElse(null) == source;
        return same ? row : new SheetRow(parts, line, source);
    }

    /** Returns a row of a line by itself, as a device that belongs to it would have it. */
    public static SheetRow alone(DeviceLine line) {
        return new SheetRow(line, null, null);
    }

    /** Returns a row of an entry that states nothing. */
    public static SheetRow blank(EReference list) {
        return new SheetRow((DeviceParts) EcoreUtil.create(list.getEReferenceType()), null, null);
    }

    /** Forgets what a change concerns. */
    public void forget(DocumentChange change) {
        if (change.reloaded()) {
            known.clear();
            return;
        }
        Set<EObject> changed = change.notifications().stream().map(Notification::getNotifier)
                .filter(EObject.class::isInstance).map(EObject.class::cast).map(SheetRows::whole)
                .collect(Collectors.toSet());
        known.values()
                .removeIf(row -> changed.contains(row.parts()) || row.line().filter(changed::contains).isPresent());
    }

    /** The device or line that an object is, or is a part of. */
    private static EObject whole(EObject object) {
        EObject whole = object;
        while (whole.eContainer() != null && !(whole instanceof DeviceParts)) {
            whole = whole.eContainer();
        }
        return whole;
    }
}
