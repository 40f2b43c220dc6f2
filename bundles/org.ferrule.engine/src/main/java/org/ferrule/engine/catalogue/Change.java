/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.catalogue;

import java.util.Optional;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.BenchResult;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.ModelPackage;

/**
 * What an edit of a library makes stale.
 *
 * @param scope how far it goes
 * @param device the device edited, for that scope
 * @param line the id of the line edited, for that scope
 */
public record Change(Scope scope, Optional<Device> device, Optional<String> line) {

    /** How far a change goes. */
    public enum Scope {
        DEVICE, LINE, BENCH, LIBRARY
    }

    private static final Change WHOLE_LIBRARY = new Change(Scope.LIBRARY, Optional.empty(), Optional.empty());
    private static final Change BENCH_ONLY = new Change(Scope.BENCH, Optional.empty(), Optional.empty());

    /** What a notification from within a library makes stale. */
    public static Change of(Notification notification) {
        if (notification.getNotifier() instanceof DeviceLibrary) {
            return ofLibraryFeature(notification);
        }
        EObject part = (EObject) notification.getNotifier();
        while (part != null) {
            if (part instanceof Device device) {
                return new Change(Scope.DEVICE, Optional.of(device), Optional.empty());
            }
            if (part instanceof DeviceLine line) {
                return ofLine(line, notification);
            }
            if (part instanceof BenchResult) {
                return BENCH_ONLY;
            }
            part = part.eContainer();
        }
        return WHOLE_LIBRARY;
    }

    private static Change ofLibraryFeature(Notification notification) {
        return notification.getFeature() == ModelPackage.Literals.DEVICE_LIBRARY__BENCH ? BENCH_ONLY : WHOLE_LIBRARY;
    }

    /** A line that gets another id may lose devices and win others. */
    private static Change ofLine(DeviceLine line, Notification notification) {
        boolean renamed = notification.getNotifier() == line
                && notification.getFeature() == ModelPackage.Literals.DEVICE_PARTS__ID;
        return renamed ? WHOLE_LIBRARY
                : new Change(Scope.LINE, Optional.empty(), Optional.ofNullable(line.getId()));
    }
}
