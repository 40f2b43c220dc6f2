/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;

/** Keeps what was read of unchanged devices from one assembly to the next, for each wire that they run over. */
final class ReadDevices {
    private Map<Device, Map<Optional<OwnWire>, ReadDevice>> former = new IdentityHashMap<>();
    private Map<Device, Map<Optional<OwnWire>, ReadDevice>> current = new IdentityHashMap<>();
    private RuleSet rules;

    /** Begins an assembly; other rules make everything stale. */
    void begin(RuleSet nextRules) {
        if (!nextRules.equals(rules)) {
            former.clear();
        }
        rules = nextRules;
        current = new IdentityHashMap<>();
    }

    /** The device over a wire; without one, over the largest that it is stated to take. */
    ReadDevice read(Device device, Optional<OwnWire> wire) {
        return current.computeIfAbsent(device, d -> new HashMap<>(1)).computeIfAbsent(wire, w -> {
            ReadDevice known = former.getOrDefault(device, Map.of()).get(w);
            return known != null ? known : fresh(device, w);
        });
    }

    /** Ends an assembly: what it did not use is forgotten. */
    void end() {
        former = current;
    }

    private ReadDevice fresh(Device device, Optional<OwnWire> wire) {
        return wire.map(w -> ReadDevice.over(device, rules, w)).orElseGet(() -> ReadDevice.of(device, rules));
    }
}
