/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile;

/** Identifiers of what this bundle contributes. */
public final class ProfileIds {

    /** The view in which profiles are compared. */
    public static final String COMPARE_VIEW = "org.ferrule.ui.profile.compareView";

    /** The view of a required diameter. */
    public static final String REQUIRED_VIEW = "org.ferrule.ui.profile.requiredView";

    /** The view of growth curves. */
    public static final String GROWTH_VIEW = "org.ferrule.ui.profile.growthView";

    private ProfileIds() {
    }
}
