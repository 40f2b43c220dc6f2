/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.picture.Element;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Group;
import org.ferrule.picture.Line;
import org.ferrule.picture.Painter;
import org.ferrule.picture.Path;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Style;
import org.ferrule.picture.Text;
import org.ferrule.picture.Transform;

/** Collects the outlines of the shapes in groups of a name, in the coordinates of the picture. */
final class Outlines implements Painter<RuntimeException> {

    private final String id;
    private final List<Path> found = new ArrayList<>();
    private Transform toPicture = Transform.IDENTITY;
    private boolean inside;

    private Outlines(String id) {
        this.id = id;
    }

    static List<Path> of(Picture picture, String id) {
        Outlines outlines = new Outlines(id);
        picture.elements().forEach(element -> element.paintOn(outlines));
        return outlines.found;
    }

    @Override
    public void group(Group group) {
        Transform outer = toPicture;
        boolean before = inside;
        toPicture = group.frame().transform().then(outer);
        inside |= group.frame().id().filter(id::equals).isPresent();
        for (Element element : group.elements()) {
            element.paintOn(this);
        }
        inside = before;
        toPicture = outer;
    }

    @Override
    public void path(Path path) {
        if (inside) {
            found.add(path.transformed(toPicture));
        }
    }

    @Override
    public void line(Line line) {
        path(Path.polyline(List.of(line.from(), line.to()), Style.of(Fill.NONE)));
    }

    @Override
    public void text(Text text) {
        // letters have no outline of their own
    }
}
