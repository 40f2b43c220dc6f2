/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Taper;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Length;

/**
 * A stretch of a body as it lies along a drawing, hub to the left.
 *
 * @param name of the section it comes from; may be empty
 * @param from its left end in mm along the drawing
 * @param to its right end
 * @param diameter from left to right; absent when it is not known
 * @param rigid whether it cannot bend
 */
record Band(String name, double from, double to, Optional<Taper> diameter, boolean rigid) {
    /** A taper is drawn in steps of a millionth of its length. */
    private static final Length FINELY = new Length(1_000_000);

    /** A lumen from its proximal entry. */
    static List<Band> ofBore(List<Stretch> bore) {
        return bore.stream().map(s -> new Band(s.name(), s.from().mm(), s.to().mm(), s.diameter(), false)).toList();
    }

    /**
     * A shaft without what lies beside it.
     *
     * @param tip where its distal tip lies along the drawing
     */
    static List<Band> ofShaft(ReadDevice device, RuleSet rules, Phase phase, double tip) {
        List<Band> bands = new ArrayList<>();
        for (Stretch stretch : ReadDevice.of(withoutLumens(device.device()), rules).outline(phase)) {
            bands.add(new Band(stretch.name(), tip - stretch.to().mm(), tip - stretch.from().mm(),
                    stretch.diameter().map(t -> new Taper(t.end(), t.start())), isRigid(device.device(), stretch)));
        }
        Collections.reverse(bands);
        return List.copyOf(bands);
    }

    /** Without lumens there is no exit port, and so nothing beside the shaft. */
    private static Device withoutLumens(Device d) {
        return new Device(d.id(), d.name(), d.kind(), d.size(), d.effectiveLength(), d.takesWire(), d.sections(),
                List.of(), d.deploys(), d.claims(), d.parts(), d.wireSource());
    }

    private static boolean isRigid(Device device, Stretch stretch) {
        return device.sections().stream().filter(ShaftSection::rigid)
                .anyMatch(s -> s.from().compareTo(stretch.from()) <= 0 && s.to().compareTo(stretch.to()) >= 0);
    }

    /** Whether it has any length between two places. */
    boolean overlaps(double left, double right) {
        return to > left && from < right;
    }

    /** This band cut to what lies between two places that it overlaps. */
    Band cut(double left, double right) {
        double start = Math.max(from, left);
        double end = Math.min(to, right);
        return new Band(name, start, end, diameter.map(t -> new Taper(at(t, start), at(t, end))), rigid);
    }

    /** Its figure at a place; empty when its diameter is not known. */
    Optional<Figure> figureAt(double place) {
        return diameter.map(t -> at(t, place));
    }

    private Figure at(Taper taper, double place) {
        double share = to == from ? 0 : Math.max(0, Math.min(1, (place - from) / (to - from)));
        Length part = new Length(Math.round(share * FINELY.thirdNanometres()));
        return taper.isConstant() ? taper.start()
                : taper.start().towards(taper.end(), part, FINELY, RoundingMode.HALF_EVEN);
    }

    double middle() {
        return (from + to) / 2;
    }
}
