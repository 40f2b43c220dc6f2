/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** A comparison in the making. */
public final class Compared {
    private final List<Device> devices = new ArrayList<>();
    private final List<Device> around = new ArrayList<>();
    private Landmark landmark = Landmark.TIP;
    private Optional<Figure> wire = Optional.empty();
    private RuleSet rules = TestRules.exact().rules();

    private Compared() {
    }

    public static Compared devices(SampleDevice... samples) {
        Compared compared = new Compared();
        for (SampleDevice sample : samples) {
            compared.devices.add(sample.device());
        }
        return compared;
    }

    public Compared from(String word) {
        landmark = Landmark.parse(word);
        return this;
    }

    /** In the main lumen of that device. */
    public Compared in(SampleDevice outer) {
        around.add(outer.device());
        return this;
    }

    public Compared wire(String diameter) {
        wire = Optional.of(Figure.exactly(length(diameter)));
        return this;
    }

    public Compared under(TestRules other) {
        rules = other.rules();
        return this;
    }

    public ProfileComparison compare() {
        List<LumenLine> lines = around.stream().map(device -> {
            Lumen lumen = device.mainLumen().orElseThrow();
            return new LumenLine(ReadDevice.of(device, rules), lumen);
        }).toList();
        return ProfileComparison.of(devices.stream().map(device -> ReadDevice.of(device, rules)).toList(), landmark,
                lines, wire, rules);
    }

    public static Length length(String text) {
        return Dimension.parse(text).label();
    }
}
