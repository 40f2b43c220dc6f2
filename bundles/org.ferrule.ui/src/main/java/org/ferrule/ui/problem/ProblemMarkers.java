/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.problem;

/** How problems are kept as markers. */
public final class ProblemMarkers {

    /** The type of the markers, a problem marker. */
    public static final String TYPE = "org.ferrule.ui.problem";

    /** Attribute: the path of the object, see {@code ElementPath}. */
    public static final String PATH = "path";

    /** Attribute: the name of the feature, or empty. */
    public static final String FEATURE = "feature";

    /** Attribute: the code of the problem. */
    public static final String CODE = "code";

    /** Attribute: a text that could stand there instead, or empty. */
    public static final String SUGGESTION = "suggestion";

    private ProblemMarkers() {
    }
}
