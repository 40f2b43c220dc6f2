/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.List;

/** Gives a line another place among the others. */
@FunctionalInterface
public interface LineMover {

    /**
     * Moves lines, so that they stand together.
     *
     * @param side on which it stands
     * @param keys of the lines, in their order
     * @param other key of the line beside which they are to stand; none of these
     * @param after whether they stand after that one, and not before
     */
    void move(Side side, List<String> keys, String other, boolean after);
}
