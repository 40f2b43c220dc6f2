/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui;

import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceReference;

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
        ServiceReference<T> reference = context == null ? null : context.getServiceReference(type);
        if (reference == null) {
            throw new IllegalStateException(bundle.getSymbolicName() + " offers no " + type.getName());
        }
        return context.getService(reference);
    }
}
