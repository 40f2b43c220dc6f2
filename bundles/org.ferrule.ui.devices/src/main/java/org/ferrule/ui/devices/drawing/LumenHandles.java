/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.ui.devices.drawing.Handle.Target;
import org.ferrule.ui.devices.part.Shown;

/** Finds what of the lumens can be dragged in the drawing of a device: openings, borders of sections, diameters. */
final class LumenHandles {

    private static final double IN_SECTION = 0.6;
    private static final double AT_END = 0.04;

    private final List<Handle> handles = new ArrayList<>();

    private final Walls walls;

    private LumenHandles(Walls walls) {
        this.walls = walls;
    }

    static List<Handle> of(Shown device, Device read, Walls walls) {
        LumenHandles found = new LumenHandles(walls);
        for (Shown lumen : device.parts(Literals.DEVICE_PARTS__LUMENS)) {
            Object name = lumen.complete().eGet(Literals.LUMEN__NAME);
            read.lumens().stream().filter(other -> other.name().equals(name))
                    .forEach(other -> found.addLumen(lumen, other, read.effectiveLength().map(Dimension::label)));
        }
        return found.handles;
    }

    private void addLumen(Shown lumen, Lumen read, Optional<Length> end) {
        List<Shown> sections = lumen.parts(Literals.LUMEN__SECTIONS);
        if (sections.size() == read.sections().size()) {
            handles.addAll(LumenStations.of(lumen, read, end));
            for (int i = 0; i < sections.size(); i++) {
                if (isOverridable(sections.get(i))) {
                    addSection(sections.get(i), read, read.sections().get(i));
                }
            }
        }
    }

    /** What only a line states needs a name to be overridden by. */
    static boolean isOverridable(Shown section) {
        return !section.isInherited() || section.complete().eGet(Literals.LUMEN_SECTION__NAME) != null;
    }

    private void addSection(Shown section, Lumen lumen, LumenSection read) {
        boolean tapers = section.complete().eGet(Literals.LUMEN_SECTION__ID_DISTAL) != null;
        add(section, lumen, read, Literals.LUMEN_SECTION__ID, tapers ? AT_END : IN_SECTION);
        add(section, lumen, read, Literals.LUMEN_SECTION__ID_DISTAL, 1 - AT_END);
    }

    private void add(Shown section, Lumen lumen, LumenSection read, EAttribute feature, double share) {
        Target target = new Target(section, feature);
        if (Handles.length(target.value()).isPresent()) {
            Length entry = lumen.proximalAt();
            Spot spot = Spot.along(lumen.name(), entry.minus(read.from()).mm(), entry.minus(read.to()).mm(), share);
            String name = Handles.name(section, feature);
            Handle handle = Handles.diameter(lumen.name() + ": " + name, spot, target);
            Length step = target.value().lastPlace();
            handles.add(walls.shaftBetween(entry.minus(read.to()), entry.minus(read.from()))
                    .map(shaft -> handle.below(shaft.minus(step))).orElse(handle));
        }
    }
}
