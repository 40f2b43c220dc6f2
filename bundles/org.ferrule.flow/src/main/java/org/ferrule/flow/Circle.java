/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

/** A disc in the section, in radii of the lumen. */
record Circle(Complex centre, double radius) {

    /** Returns by how much it reaches out of the lumen; negative inside. */
    double excess() {
        return centre.size() + radius - 1;
    }

    /** Returns by how much two discs overlap; negative where there is a gap. */
    double overlap(Circle other) {
        return radius + other.radius - centre.minus(other.centre).size();
    }

    Circle moved(Complex by) {
        return new Circle(centre.plus(by), radius);
    }
}
