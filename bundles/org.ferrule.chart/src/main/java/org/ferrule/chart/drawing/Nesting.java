/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.stack.Level;
import org.ferrule.fit.stack.LevelAnswer;
import org.ferrule.fit.stack.Placed;

/** Where the devices of a stack lie in a drawing: each in the middle of what holds it, several side by side. */
final class Nesting {
    private final List<NestedBody> bodies = new ArrayList<>();
    private double tipMm;
    private double offsetMm;
    private double aroundMm;

    private Nesting() {
    }

    /** The devices, outermost first; a valve lies at the hub and is left out. */
    static List<NestedBody> of(List<LevelAnswer> levels, Phase phase) {
        Nesting nesting = new Nesting();
        for (int i = 0; i < levels.size(); i++) {
            Level level = levels.get(i).level();
            if (level.device().device().device().kind() != DeviceKind.HAEMOSTASIS_VALVE) {
                nesting.add(level, i, phase);
            }
        }
        return nesting.bodies;
    }

    private void add(Level level, int number, Phase phase) {
        List<Placed> devices = new ArrayList<>(level.beside());
        devices.add(level.device());
        double whole = devices.stream().mapToDouble(d -> thickness(shaft(d, phase))).sum();
        double edge = offsetMm - whole / 2;
        double holderTip = tipMm;
        for (Placed placed : devices) {
            List<Stretch> shaft = shaft(placed, phase);
            double thickness = thickness(shaft);
            double tip = number == 0 ? 0 : holderTip + placed.ahead().mm();
            NestedBody body = body(placed, shaft, number, tip, edge + thickness / 2);
            bodies.add(body);
            edge += thickness;
            tipMm = tip;
        }
        NestedBody holder = bodies.get(bodies.size() - 1);
        offsetMm = holder.offsetMm();
        aroundMm = holder.lumen().map(l -> narrowest(holder.read(), l)).orElse(aroundMm);
    }

    private NestedBody body(Placed placed, List<Stretch> shaft, int number, double tip, double offset) {
        Optional<Lumen> lumen = placed.lumen().map(placed.device().device()::lumen)
                .or(placed.device().device()::mainLumen);
        boolean collar = lumen.filter(l -> l.opening() == Lumen.Opening.COLLAR).isPresent();
        double rod = shaft.isEmpty() ? 0 : thickness(shaft.subList(shaft.size() - 1, shaft.size()));
        double aside = collar ? Math.max(0, (aroundMm - rod) / 2) : 0;
        return new NestedBody(placed.device(), shaft, lumen, number, tip, offset, offset + aside);
    }

    private static List<Stretch> shaft(Placed placed, Phase phase) {
        return placed.device().shaft(placed.used() ? Phase.OUT : phase);
    }

    private static double thickness(List<Stretch> shaft) {
        return shaft.stream().flatMap(s -> s.diameter().stream()).mapToDouble(t -> t.largest().centre().mm()).max()
                .orElse(1);
    }

    private static double narrowest(ReadDevice device, Lumen lumen) {
        return device.bore(lumen).stream().flatMap(s -> s.diameter().stream())
                .mapToDouble(t -> t.smallest().centre().mm()).min().orElse(0);
    }
}
