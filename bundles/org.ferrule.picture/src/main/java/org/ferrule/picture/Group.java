/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.List;

/**
 * Elements that belong together: with coordinates of their own, cut off at a box if wished, and with a name by which
 * a click can be traced to what was drawn.
 *
 * @param frame the coordinates, clip, name and tooltip
 * @param elements what it holds, in the order of painting
 */
public record Group(Frame frame, List<Element> elements) implements Element {

    public Group {
        elements = List.copyOf(elements);
    }

    @Override
    public <E extends Exception> void paintOn(Painter<E> painter) throws E {
        painter.group(this);
    }
}
