/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.next;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.ferrule.model.Device;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.part.CellWords;

/**
 * A field that may count up from size to size.
 *
 * @param title what it is called
 * @param part the part that states it, or null for the device itself
 * @param feature the field
 */
record SizeField(String title, EReference part, EAttribute feature) {

    static final SizeField ID = new SizeField("Id", null, Literals.DEVICE_PARTS__ID);
    static final SizeField SIZE = new SizeField("Size", null, Literals.DEVICE_PARTS__SIZE);

    static final List<SizeField> ALL = List.of(ID, new SizeField("Name", null, Literals.DEVICE_PARTS__NAME),
            new SizeField("Catalogue code", null, Literals.DEVICE_PARTS__MODEL), SIZE,
            new SizeField("Balloon diameter", Literals.DEVICE_PARTS__BALLOON, Literals.BALLOON__DIAMETER),
            new SizeField("Balloon length", Literals.DEVICE_PARTS__BALLOON, Literals.BALLOON__LENGTH),
            new SizeField("Stent diameter", Literals.DEVICE_PARTS__STENT, Literals.STENT__DIAMETER),
            new SizeField("Stent length", Literals.DEVICE_PARTS__STENT, Literals.STENT__LENGTH));

    /** Returns the object of a device that states it; nothing if it has none. */
    Optional<EObject> holder(Device device) {
        return part == null ? Optional.of(device) : Optional.ofNullable((EObject) device.eGet(part));
    }

    /** Returns what a device states; null for nothing. */
    String text(Device device) {
        return holder(device).map(object -> CellWords.of(object, feature)).filter(text -> !text.isEmpty()).orElse(null);
    }

    /** Returns what the next size would state, where the step is evident. */
    Optional<String> proposal(Device device, SizeStep step) {
        Function<Device, String> texts = this::text;
        return this == SIZE ? Optional.of(step.size()) : step.follow(device, texts);
    }
}
