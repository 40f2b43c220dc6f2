/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.Optional;

/**
 * What a {@link Group} gives to its elements. Transformations are added outside the former ones:
 * {@code Frame.PLAIN.scaled(2, 2).translated(10, 0)} doubles first and shifts by 10 mm of paper then.
 *
 * @param transform how its coordinates lie in those around it
 * @param clip what lies outside this box, in the coordinates of the group, is not painted
 * @param id the name of what is drawn; need not be unique
 * @param tooltip words about what is drawn, on one or several lines
 */
public record Frame(Transform transform, Optional<Box> clip, Optional<String> id, Optional<String> tooltip) {

    /** No change of coordinates, no clip, no name. */
    public static final Frame PLAIN = new Frame(Transform.IDENTITY, Optional.empty(), Optional.empty(),
            Optional.empty());

    public Frame {
        id.ifPresent(name -> Check.printable("Id", name));
        tooltip.ifPresent(words -> Check.printableLines("Tooltip", words));
    }

    /** A frame with its origin at a place. */
    public static Frame at(double xMm, double yMm) {
        return PLAIN.translated(xMm, yMm);
    }

    /** A frame for what is known by a name. */
    public static Frame named(String id) {
        return PLAIN.withId(id);
    }

    /** This frame, shifted. */
    public Frame translated(double dxMm, double dyMm) {
        return withTransform(transform.then(Transform.translation(dxMm, dyMm)));
    }

    /** This frame, its size changed about the origin. */
    public Frame scaled(double factorX, double factorY) {
        return withTransform(transform.then(Transform.scaling(factorX, factorY)));
    }

    /** This frame, turned about the origin; positive is clockwise. */
    public Frame rotated(double degrees) {
        return withTransform(transform.then(Transform.rotation(degrees)));
    }

    /** This frame with another transformation. */
    public Frame withTransform(Transform other) {
        return new Frame(other, clip, id, tooltip);
    }

    /** This frame, cut off at a box in its own coordinates. */
    public Frame clippedTo(Box box) {
        return new Frame(transform, Optional.of(box), id, tooltip);
    }

    /** This frame with a name. */
    public Frame withId(String name) {
        return new Frame(transform, clip, Optional.of(name), tooltip);
    }

    /** This frame with words about what is drawn. */
    public Frame withTooltip(String words) {
        return new Frame(transform, clip, id, Optional.of(words));
    }
}
