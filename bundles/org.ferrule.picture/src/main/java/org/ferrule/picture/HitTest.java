/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.ArrayList;
import java.util.List;

/** Finds what was drawn at a place. */
final class HitTest {

    private final double toleranceMm;
    private final TextMeasure measure = TextMeasure.standard();

    HitTest(double toleranceMm) {
        this.toleranceMm = Check.notNegative("tolerance", toleranceMm);
    }

    /** The groups with a name or tooltip around the uppermost element at a place, innermost first. */
    List<Group> groupsAt(Point place, List<Element> elements) {
        return find(place, elements, List.of());
    }

    private List<Group> find(Point place, List<Element> elements, List<Group> around) {
        for (int i = elements.size() - 1; i >= 0; i--) {
            List<Group> found = elements.get(i) instanceof Group group ? findIn(group, place, around)
                    : touches(elements.get(i), place) ? around : List.of();
            if (!found.isEmpty()) {
                return found;
            }
        }
        return List.of();
    }

    private List<Group> findIn(Group group, Point outside, List<Group> around) {
        Transform transform = group.frame().transform();
        Point place = transform.inverse().apply(outside);
        if (!group.frame().clip().map(clip -> clip.contains(place)).orElse(true)) {
            return List.of();
        }
        HitTest inside = new HitTest(toleranceMm / transform.scale());
        return inside.find(place, group.elements(), tells(group) ? prepended(group, around) : around);
    }

    private static boolean tells(Group group) {
        return group.frame().id().isPresent() || group.frame().tooltip().isPresent();
    }

    private static List<Group> prepended(Group group, List<Group> around) {
        List<Group> longer = new ArrayList<>(List.of(group));
        longer.addAll(around);
        return List.copyOf(longer);
    }

    private boolean touches(Element element, Point place) {
        if (element instanceof Line line) {
            return new FlatOutline(List.of(line.from(), line.to())).distanceMm(place) <= reachMm(line.stroke());
        }
        if (element instanceof Text text) {
            return touchesText(text, place);
        }
        return touchesShape((Shape) element, place);
    }

    private boolean touchesShape(Shape shape, Point place) {
        double reach = shape.style().stroke().map(this::reachMm).orElse(toleranceMm);
        if (!shape.bounds().inset(-reach).contains(place)) {
            return false;
        }
        List<FlatOutline> parts = FlatOutline.partsOf(shape.outline());
        boolean fillsOpenParts = !shape.style().fill().isNone();
        long around = parts.stream().filter(part -> fillsOpenParts || part.isClosed())
                .filter(part -> part.contains(place)).count();
        return around % 2 == 1 || parts.stream().anyMatch(part -> part.distanceMm(place) <= reach);
    }

    private boolean touchesText(Text text, Point place) {
        double width = measure.widthMm(text.string(), text.style());
        double left = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        Box box = new Box(left, -measure.ascentMm(text.style()), width, measure.leadingMm(text.style()));
        Transform toText = Transform.rotation(text.rotationDegrees())
                .then(Transform.translation(text.at().xMm(), text.at().yMm())).inverse();
        return box.contains(toText.apply(place));
    }

    private double reachMm(Stroke stroke) {
        return Math.max(toleranceMm, stroke.widthMm() / 2);
    }
}
