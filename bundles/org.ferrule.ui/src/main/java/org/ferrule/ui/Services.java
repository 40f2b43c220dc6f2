/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui;

import java.util.Optional;

import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;

/**
 * Finds what the workbench has one of: {@code DocumentRecords}, {@code DocumentSessions}, {@code ProblemBoard} and
 * {@code UnitPreferences}. They are OSGi services, there as long as the bundle runs.
 */
public final class Services {

    private Services() {
    }

    /**
     * Returns the service.
     *
     * @throws IllegalStateException if there is none
     */
    public static <T> T get(Class<T> type) {
        Bundle bundle = FrameworkUtil.getBundle(Services.class);
        BundleContext context = bundle.getBundleContext();
        return Optional.ofNullable(context).flatMap(running -> find(running, type)).orElseThrow(
                () -> new IllegalStateException(bundle.getSymbolicName() + " offers no " + type.getName()));
    }

    private static <T> Optional<T> find(BundleContext context, Class<T> type) {
        return Optional.ofNullable(context.getServiceReference(type)).map(context::getService);
    }
}
