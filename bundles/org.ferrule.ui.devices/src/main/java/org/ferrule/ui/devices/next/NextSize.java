/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.next;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.sheet.CellReading;
import org.ferrule.ui.devices.sheet.StepCommand;
import org.ferrule.ui.document.DocumentSession;

/** Makes the next size of a line out of one of its sizes. */
public final class NextSize {

    private final Device device;
    private final DeviceLibrary library;

    /** Looks at a device of a library. */
    public NextSize(Device device) {
        this.device = device;
        library = (DeviceLibrary) device.eContainer();
    }

    Device device() {
        return device;
    }

    /** Returns the steps that are evident; none for a device without a line. */
    List<SizeStep> steps() {
        List<Device> line = device.getLine() == null ? List.of()
                : library.getDevices().stream().filter(other -> Objects.equals(other.getLine(), device.getLine()))
                        .toList();
        return SizeStep.of(device, line);
    }

    /** Returns the fields that the device states, and an id in any case. */
    List<SizeField> fields() {
        return SizeField.ALL.stream().filter(field -> field == SizeField.ID || field.text(device) != null).toList();
    }

    boolean isTaken(String id) {
        return library.getDevices().stream().anyMatch(other -> id.equals(other.getId()));
    }

    /**
     * Adds the next size behind the former one, by one command.
     *
     * @param texts what it states for its fields
     * @param dropped what it does not take over
     * @return the new device
     */
    Device add(DocumentSession session, Map<SizeField, String> texts, Set<Keepsake> dropped) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        Device copy = (Device) copier.copy(device);
        copier.copyReferences();
        dropped.forEach(keepsake -> copier.get(keepsake.object()).eUnset(keepsake.feature()));
        texts.forEach((field, text) -> set(field.holder(copy).orElseThrow(), field, text));
        int place = library.getDevices().indexOf(device) + 1;
        session.execute(new StepCommand("Addition of the next size", List.of(() -> AddCommand.create(session.domain(),
                library, Literals.DEVICE_LIBRARY__DEVICES, copy, place))));
        return copy;
    }

    private static void set(EObject holder, SizeField field, String text) {
        Object value = CellReading.of(field.feature(), text).value();
        if (value == null) {
            holder.eUnset(field.feature());
        } else {
            holder.eSet(field.feature(), value);
        }
    }
}
