/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Device;
import org.ferrule.model.ResolvedDevice;

/** A rule about complete devices, with what they inherit; its problems are told of who states the values. */
@FunctionalInterface
interface DeviceCheck extends Check {

    @Override
    default void check(EObject object, Examination examination) {
        if (object instanceof Device device) {
            check(examination.resolved(device), examination);
        }
    }

    /** Looks at one complete device. */
    void check(ResolvedDevice device, Examination examination);
}
