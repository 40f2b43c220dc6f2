/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

/** Gives a line another place among the others. */
@FunctionalInterface
public interface LineMover {

    /**
     * Moves a line.
     *
     * @param side on which it stands
     * @param key of the line
     * @param other key of the line beside which it is to stand
     * @param after whether it stands after that one, and not before
     */
    void move(Side side, String key, String other, boolean after);
}
