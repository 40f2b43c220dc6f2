/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile;

/** Identifiers of what this bundle contributes. */
public final class ProfileIds {

    /** The view in which profiles are compared. */
    public static final String COMPARE_VIEW = "org.ferrule.ui.profile.compareView";

    private ProfileIds() {
    }
}
