/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

/** A device pushed through a lumen. */
interface Push {

    /** Whether the device meets the lumen at all. */
    boolean meets();

    /** The least gap on the whole way, of the values that were drawn. */
    Gap leastGap(double[] drawn);
}
