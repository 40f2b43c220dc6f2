/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.ui.devices.drawing.Handle.Target;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.look.ModelLabels;

/**
 * Finds the stations of a lumen that can be dragged: its openings, of which the proximal one may be a port in the side,
 * and the borders of its sections, which count from its entry. Only what is stated has a handle.
 */
final class LumenStations {

    /** Longer than any device, where none states how long it is. */
    private static final Length FAR = Length.ofMm(5000);

    private final List<Handle> handles = new ArrayList<>();
    private final Shown lumen;
    private final Lumen read;
    private final List<Shown> sections;

    private LumenStations(Shown lumen, Lumen read) {
        this.lumen = lumen;
        this.read = read;
        sections = lumen.parts(Literals.LUMEN__SECTIONS);
    }

    /**
     * Returns the handles: openings first, then borders from the entry on.
     *
     * @param read the same lumen as it is drawn, with as many sections
     * @param end the effective length of the device
     */
    static List<Handle> of(Shown lumen, Lumen read, Optional<Length> end) {
        LumenStations found = new LumenStations(lumen, read);
        found.openings(end.orElse(FAR));
        for (int i = 0; i < found.sections.size(); i++) {
            if (LumenHandles.isOverridable(found.sections.get(i))) {
                found.borders(i);
            }
        }
        return found.handles;
    }

    /** An opening stays outside of all that is stated of the sections. */
    private void openings(Length end) {
        Length inside = Length.ZERO;
        for (int i = 0; i < sections.size(); i++) {
            inside = inside.max(stated(i, Literals.LUMEN_SECTION__TO).orElse(read.sections().get(i).from()));
        }
        double entry = read.sections().isEmpty() ? 0 : acrossMm(read.sections().get(0).proximal());
        double exit = read.sections().isEmpty() ? 0 : acrossMm(read.sections().get(sections.size() - 1).distal());
        opening(Literals.LUMEN__PROXIMAL_AT, read.distalAt().plus(inside), end.max(read.proximalAt()), entry);
        opening(Literals.LUMEN__DISTAL_AT, Length.ZERO, read.proximalAt().minus(inside), exit);
    }

    private void opening(EAttribute feature, Length least, Length most, double acrossMm) {
        Target target = new Target(lumen, feature);
        Handles.length(target.value()).ifPresent(at -> handles.add(new Handle(
                read.name() + ": " + ModelLabels.feature(feature), Spot.inLumen(read.name(), at.mm(), acrossMm),
                List.of(target), least, most)));
    }

    private void borders(int index) {
        Optional<Length> to = stated(index, Literals.LUMEN_SECTION__TO);
        LumenSection section = read.sections().get(index);
        to.ifPresent(at -> {
            Optional<Integer> next = next(at);
            List<Target> targets = new ArrayList<>(List.of(target(index, Literals.LUMEN_SECTION__TO)));
            next.ifPresent(other -> targets.add(target(other, Literals.LUMEN_SECTION__FROM)));
            String name = next.map(other -> "border of " + section.name() + " and " + read.sections().get(other).name())
                    .orElse(Handles.name(sections.get(index), Literals.LUMEN_SECTION__TO));
            border(name, targets, section.from(),
                    next.map(other -> read.sections().get(other).to()).orElse(read.length()),
                    acrossMm(section.distal()));
        });
        stated(index, Literals.LUMEN_SECTION__FROM).filter(at -> at.compareTo(Length.ZERO) > 0 && !follows(at))
                .ifPresent(at -> border(Handles.name(sections.get(index), Literals.LUMEN_SECTION__FROM),
                        List.of(target(index, Literals.LUMEN_SECTION__FROM)), Length.ZERO, section.to(),
                        acrossMm(section.proximal())));
    }

    /** A border keeps at least one step away from those beside it. */
    private void border(String name, List<Target> targets, Length least, Length most, double acrossMm) {
        Dimension value = targets.get(0).value();
        Spot spot = Spot.fromEntry(read.name(), read.proximalAt().mm(), value.label().mm(), acrossMm);
        handles.add(new Handle(read.name() + ": " + name, spot, targets, least.plus(value.lastPlace()),
                most.minus(value.lastPlace())));
    }

    /** The section that begins where another ends, and says so. */
    private Optional<Integer> next(Length end) {
        for (int i = 0; i < sections.size(); i++) {
            if (stated(i, Literals.LUMEN_SECTION__FROM).filter(end::equals).isPresent()
                    && LumenHandles.isOverridable(sections.get(i))) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private boolean follows(Length start) {
        for (int i = 0; i < sections.size(); i++) {
            if (stated(i, Literals.LUMEN_SECTION__TO).filter(start::equals).isPresent()
                    && LumenHandles.isOverridable(sections.get(i))) {
                return true;
            }
        }
        return false;
    }

    private Target target(int index, EAttribute feature) {
        return new Target(sections.get(index), feature);
    }

    private Optional<Length> stated(int index, EAttribute feature) {
        return Handles.length(target(index, feature).value());
    }

    private static double acrossMm(Optional<Dimension> diameter) {
        return diameter.filter(Dimension::readable).map(known -> known.label().mm()).orElse(0.0);
    }
}
