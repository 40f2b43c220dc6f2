/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.fit.device.Device;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.ui.devices.drawing.Handle.Target;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.look.ModelLabels;

/**
 * Finds what can be dragged in the drawing of a device: the borders of its sections, their diameters or other
 * measures, and what belongs to its lumens. What cannot be read has no handle, and what only a line states
 * none without a name to override it by.
 */
final class Handles {

    private static final double IN_SECTION = 0.3;
    private static final double AT_END = 0.04;

    private final List<Handle> handles = new ArrayList<>();
    private final List<Shown> sections;

    private final Walls walls;

    private Handles(Shown device, Walls walls) {
        this.walls = walls;
        sections = device.parts(Literals.DEVICE_PARTS__SECTIONS).stream().filter(Handles::isPlaced)
                .filter(section -> !section.isInherited() || of(section).getName() != null).toList();
    }

    /**
     * Returns the handles, from the tip on: borders and diameters of sections, then stations and diameters of lumens.
     *
     * @param read the same device as it is drawn
     */
    static List<Handle> of(Shown device, Device read) {
        Walls walls = new Walls(read);
        Handles found = new Handles(device, walls);
        found.sections.forEach(found::addSection);
        found.handles.sort(Comparator.comparingDouble(h -> h.spot().fromMm() + h.spot().toMm()));
        found.handles.addAll(LumenHandles.of(device, read, walls));
        return List.copyOf(found.handles);
    }

    private static ShaftSection of(Shown section) {
        return (ShaftSection) section.complete();
    }

    private static boolean isPlaced(Shown section) {
        Optional<Length> from = length(of(section).getFrom());
        Optional<Length> to = length(of(section).getTo());
        return from.isPresent() && to.isPresent() && from.get().compareTo(to.get()) < 0;
    }

    static Optional<Length> length(Dimension dimension) {
        return Optional.ofNullable(dimension).filter(Dimension::readable).map(Dimension::label);
    }

    private static Length from(Shown section) {
        return of(section).getFrom().label();
    }

    private static Length to(Shown section) {
        return of(section).getTo().label();
    }

    private void addSection(Shown section) {
        Optional<Shown> next = sections.stream().filter(other -> from(other).equals(to(section))).findFirst();
        border(section, next);
        boolean follows = sections.stream().anyMatch(other -> to(other).equals(from(section)));
        if (!follows && from(section).compareTo(Length.ZERO) > 0) {
            station(name(section, Literals.SHAFT_SECTION__FROM),
                    List.of(new Target(section, Literals.SHAFT_SECTION__FROM)), Length.ZERO, to(section));
        }
        if (of(section).getOval() == null && of(section).getDiscs().isEmpty()) {
            diameters(section);
        } else {
            handles.addAll(new ShapeHandles(section, walls.lumenBetween(from(section), to(section))).handles());
        }
    }

    private void border(Shown section, Optional<Shown> next) {
        List<Target> targets = new ArrayList<>(List.of(new Target(section, Literals.SHAFT_SECTION__TO)));
        next.ifPresent(other -> targets.add(new Target(other, Literals.SHAFT_SECTION__FROM)));
        String name = next.map(other -> "Border of " + of(section).getName() + " and " + of(other).getName())
                .orElse(name(section, Literals.SHAFT_SECTION__TO));
        station(name, targets, from(section), next.map(Handles::to).orElse(Length.ofMm(5000)));
    }

    /** A station keeps at least one step away from those beside it. */
    private void station(String name, List<Target> targets, Length least, Length most) {
        double at = targets.get(0).value().label().mm();
        Length step = targets.get(0).value().lastPlace();
        handles.add(new Handle(name, Spot.at(at), targets, least.plus(step), most.minus(step)));
    }

    private void diameters(Shown section) {
        boolean tapers = length(of(section).getOdProximal()).isPresent();
        diameter(section, Literals.SHAFT_SECTION__OD, tapers ? AT_END : IN_SECTION);
        diameter(section, Literals.SHAFT_SECTION__OD_PROXIMAL, 1 - AT_END);
    }

    private void diameter(Shown section, EAttribute feature, double share) {
        Target target = new Target(section, feature);
        if (length(target.value()).isPresent()) {
            Spot spot = Spot.along("", from(section).mm(), to(section).mm(), share);
            Length lumen = walls.lumenBetween(from(section), to(section));
            handles.add(diameter(name(section, feature), spot, target).above(lumen.plus(target.value().lastPlace())));
        }
    }

    /** A diameter stays above nothing, and above its own tolerance. */
    static Handle diameter(String name, Spot spot, Target target) {
        Dimension value = target.value();
        Length below = value.low().map(value.label()::minus).orElse(Length.ZERO);
        Handle handle = new Handle(name, spot, List.of(target), below.max(value.lastPlace()), value.label());
        return new Handle(name, spot, List.of(target), handle.least(), handle.kind().most().max(value.label()));
    }

    static String name(Shown part, EAttribute feature) {
        return named(part, ModelLabels.feature(feature));
    }

    /** What is said of a part, after its name if it has one. */
    static String named(Shown part, String label) {
        Object name = part.complete().eGet(part.complete().eClass().getEStructuralFeature("name"));
        return name == null ? label : name + ": " + label;
    }
}
