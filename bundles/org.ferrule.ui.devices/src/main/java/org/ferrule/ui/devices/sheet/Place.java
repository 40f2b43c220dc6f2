/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.ferrule.ui.devices.part.Overriding;
import org.ferrule.ui.devices.part.Shown;

/**
 * Where a figure of a device stands: in the device itself or in one of its parts, its own or its line's.
 *
 * @param device the device
 * @param part what states the figure, or could: the device with all that it inherits, or a part of it
 * @param feature the feature of the part
 */
public record Place(Shown device, EObject part, EAttribute feature) {

    /** Returns the value that holds, stated or inherited; null for none. */
    public Object value() {
        return part.eIsSet(feature) ? part.eGet(feature) : null;
    }

    /** Tells whether the value comes from the line. */
    public boolean inherited() {
        return value() != null && device.inherits(part, feature);
    }

    /**
     * Returns the command that states another value for the device alone; what is only inherited is overridden.
     *
     * @param value the value, or null to state none, and so to inherit again
     */
    public Command command(EditingDomain domain, Object value) {
        return Overriding.set(domain, device.within(part), feature, value);
    }
}
