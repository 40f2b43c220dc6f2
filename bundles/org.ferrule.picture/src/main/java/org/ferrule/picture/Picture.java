/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.List;

/**
 * One drawing or page.
 *
 * @param widthMm width of the paper, greater than 0
 * @param heightMm height of the paper, greater than 0
 * @param title what it shows, in a few words; may be empty
 * @param description what it shows, for those who cannot see it; may be empty
 * @param elements what is drawn, in the order of painting
 */
public record Picture(double widthMm, double heightMm, String title, String description, List<Element> elements) {

    public Picture {
        Check.positive("width", widthMm);
        Check.positive("height", heightMm);
        Check.printable("Title", title);
        Check.printableLines("Description", description);
        elements = List.copyOf(elements);
    }

    /** The whole paper. */
    public Box paper() {
        return new Box(0, 0, widthMm, heightMm);
    }

    /**
     * What was drawn at a place: the groups with a name or a tooltip around the uppermost element there, innermost
     * first. A closed outline is hit anywhere inside, filled or not; elements outside such groups let a click through.
     *
     * @param toleranceMm how far beside a line or an outline still counts, 0 or more
     */
    public List<Group> groupsAt(Point place, double toleranceMm) {
        return new HitTest(toleranceMm).groupsAt(place, elements);
    }

    /** This picture with another title. */
    public Picture titled(String words) {
        return new Picture(widthMm, heightMm, words, description, elements);
    }

    /** This picture with another description. */
    public Picture described(String words) {
        return new Picture(widthMm, heightMm, title, words, elements);
    }
}
