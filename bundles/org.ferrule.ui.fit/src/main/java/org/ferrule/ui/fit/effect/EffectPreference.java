/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** Whether verdicts that a save changes are shown before it. */
public final class EffectPreference {

    /** The node of the preference. */
    public static final String NODE = "org.ferrule.ui.fit";
    /** The key of the preference; true if it is not set. */
    public static final String KEY = "save.showsVerdicts";

    private EffectPreference() {
    }

    /** Tells whether they are shown. */
    public static boolean isShown() {
        return node().getBoolean(KEY, true);
    }

    /** Shows them from now on, or not. */
    public static void show(boolean shown) {
        node().putBoolean(KEY, shown);
        try {
            node().flush();
        } catch (BackingStoreException e) {
            ILog.of(EffectPreference.class).log(Status.error("A preference could not be kept", e));
        }
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }
}
