/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.model.Disc;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Oval;
import org.ferrule.model.ShaftSection;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;
import org.ferrule.ui.devices.drawing.Handle.Target;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.look.ModelLabels;

/**
 * Finds what can be dragged of a section that is not round: both measures of an oval; of each disc of a composed
 * section its diameter, and where it lies along the axis that the drawing shows. Where only a line states the discs, the
 * size states all of them when one is dragged.
 */
final class ShapeHandles {

    private static final double WIDTH_AT = 0.3;
    private static final double HEIGHT_AT = 0.7;
    /** How many diameters a disc can be moved from the origin at most. */
    private static final int FAR = 10;

    private final Shown section;
    private final ShaftSection stated;
    private final Length lumen;

    /**
     * Finds those of a section.
     *
     * @param lumen the widest lumen in it, which an oval is no thinner than
     */
    ShapeHandles(Shown section, Length lumen) {
        this.section = section;
        this.stated = (ShaftSection) section.complete();
        this.lumen = lumen;
    }

    List<Handle> handles() {
        List<Handle> handles = new ArrayList<>();
        section.parts(Literals.SHAFT_SECTION__OVAL).forEach(oval -> oval(oval, handles));
        List<Shown> discs = section.parts(Literals.SHAFT_SECTION__DISCS);
        if (!discs.isEmpty() && discs.stream().allMatch(ShapeHandles::isPlaced)) {
            boolean acrossX = acrossX();
            for (int i = 0; i < discs.size(); i++) {
                disc(discs.get(i), i, acrossX ? Literals.DISC__X : Literals.DISC__Y, discs.size(), handles);
            }
        }
        return handles;
    }

    private Spot spot(double share) {
        return Spot.along("", stated.getFrom().label().mm(), stated.getTo().label().mm(), share);
    }

    private void oval(Shown part, List<Handle> handles) {
        Oval oval = (Oval) part.complete();
        Optional<Length> width = Handles.length(oval.getWidth());
        Optional<Length> height = Handles.length(oval.getHeight());
        if (width.isPresent() && height.isPresent()) {
            handles.add(measure(part, Literals.OVAL__WIDTH, WIDTH_AT).above(height.get()));
            handles.add(measure(part, Literals.OVAL__HEIGHT, HEIGHT_AT).below(width.get()));
        }
    }

    private Handle measure(Shown part, EAttribute feature, double share) {
        Target target = new Target(part, feature);
        return Handles.diameter(Handles.name(section, feature), spot(share), target)
                .above(lumen.plus(target.value().lastPlace()));
    }

    private static boolean isPlaced(Shown part) {
        Disc disc = (Disc) part.complete();
        return Handles.length(disc.getDiameter()).isPresent() && isReadable(disc.getX())
                && isReadable(disc.getY());
    }

    private static boolean isReadable(Offset offset) {
        return offset != null && offset.readable();
    }

    /** The drawing shows the axis along which discs lie farther apart. */
    private boolean acrossX() {
        return spread(Literals.DISC__X).compareTo(spread(Literals.DISC__Y)) >= 0;
    }

    private Length spread(EAttribute axis) {
        List<Length> places = stated.getDiscs().stream().map(disc -> ((Offset) disc.eGet(axis)).value()).sorted()
                .toList();
        return places.get(places.size() - 1).minus(places.get(0));
    }

    /** Those of one disc lie one after the other along the section, so that none covers another. */
    private void disc(Shown part, int index, EAttribute axis, int discs, List<Handle> handles) {
        Target diameter = new Target(part, Literals.DISC__DIAMETER);
        Target place = new Target(part, axis);
        double diameterMm = diameter.value().label().mm();
        String name = Handles.named(section, "Disc " + (index + 1) + ": ");
        Spot edge = spot((index + 1.0 / 3) / discs)
                .ofDisc(new DiscSpot(stated.getName(), index, diameterMm, false));
        Spot centre = spot((index + 2.0 / 3) / discs)
                .ofDisc(new DiscSpot(stated.getName(), index, diameterMm, true));
        handles.add(Handles.diameter(name + ModelLabels.feature(Literals.DISC__DIAMETER), edge, diameter));
        Length far = diameter.value().label().times(FAR);
        handles.add(new Handle(name + ModelLabels.feature(axis), centre, List.of(place), far.negated(), far));
    }
}
