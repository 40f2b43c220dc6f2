/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;

/** Keeps what was read of unchanged devices from one assembly to the next. */
final class ReadDevices {
    private Map<Device, ReadDevice> former = new IdentityHashMap<>();
    private Map<Device, ReadDevice> current = new IdentityHashMap<>();
    private RuleSet rules;
    private Optional<OwnWire> wire = Optional.empty();

    /** Begins an assembly; other rules or another wire make everything stale. */
    void begin(RuleSet nextRules, Optional<OwnWire> nextWire) {
        if (!nextRules.equals(rules) || !nextWire.equals(wire)) {
            former.clear();
        }
        rules = nextRules;
        wire = nextWire;
        current = new IdentityHashMap<>();
    }

    ReadDevice read(Device device) {
        return current.computeIfAbsent(device, d -> {
            ReadDevice known = former.get(d);
            return known != null ? known : fresh(d);
        });
    }

    /** Ends an assembly: what it did not use is forgotten. */
    void end() {
        former = current;
    }

    private ReadDevice fresh(Device device) {
        return wire.map(w -> ReadDevice.over(device, rules, w)).orElseGet(() -> ReadDevice.of(device, rules));
    }
}
