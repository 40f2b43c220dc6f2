/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.Objects;

import org.ferrule.fit.figure.Figure;
import org.ferrule.picture.Point;

/**
 * A round member of what lies in a lumen, or one of the two round ends of an oval shaft.
 *
 * @param part what it belongs to
 * @param figure its diameter
 * @param centre in mm from the centre of the circle around all members, y downwards
 */
record Member(Part part, Figure figure, Point centre) {

    /** What a member belongs to. */
    enum Part {
        SHAFT, WIRE
    }

    Member {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(centre, "centre");
    }

    double radius() {
        return figure.centre().mm() / 2;
    }
}
