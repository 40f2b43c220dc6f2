/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.rules.RuleSet;

/**
 * A device with its figures read under a rule set and over a wire, ready for any number of questions. Immutable.
 */
public final class ReadDevice {
    private final Device device;
    private final OwnWire wire;
    private final List<Stretch> outlineIn;
    private final List<Stretch> outlineOut;
    private final List<Stretch> shaftIn;
    private final List<Stretch> shaftOut;
    private final List<Stretch> rigidIn;
    private final List<Stretch> rigidOut;
    private final Map<String, List<Stretch>> bores;

    private ReadDevice(Device device, OwnWire wire, OutlineReader outlines, OutlineReader shafts,
            BoreReader boreReader) {
        this.device = device;
        this.wire = wire;
        this.outlineIn = outlines.read(Phase.IN);
        this.outlineOut = outlines.read(Phase.OUT);
        this.shaftIn = outlines.hasExitPort() ? shafts.read(Phase.IN) : outlineIn;
        this.shaftOut = outlines.hasExitPort() ? shafts.read(Phase.OUT) : outlineOut;
        this.rigidIn = outlines.rigid(Phase.IN);
        this.rigidOut = outlines.rigid(Phase.OUT);
        Map<String, List<Stretch>> read = new HashMap<>();
        for (Lumen lumen : device.lumens()) {
            read.put(lumen.name(), boreReader.read(lumen));
        }
        this.bores = Map.copyOf(read);
    }

    /** Reads a device that runs over the largest wire it is stated to take. */
    public static ReadDevice of(Device device, RuleSet rules) {
        return over(device, rules, OwnWire.statedFor(device, new FigureReader(rules)));
    }

    /** Reads a device that runs over that wire. */
    public static ReadDevice over(Device device, RuleSet rules, OwnWire wire) {
        FigureReader reader = new FigureReader(rules);
        return new ReadDevice(device, wire, new OutlineReader(device, rules, reader, wire),
                OutlineReader.ofShaft(device, rules, reader), new BoreReader(device, reader));
    }

    public Device device() {
        return device;
    }

    /** The wire over which it runs. */
    public OwnWire wire() {
        return wire;
    }

    /** Its outline from the distal tip. */
    public List<Stretch> outline(Phase phase) {
        return phase == Phase.IN ? outlineIn : outlineOut;
    }

    /** The outline of its shaft from the distal tip, without the wire that may lie beside it. */
    public List<Stretch> shaft(Phase phase) {
        return phase == Phase.IN ? shaftIn : shaftOut;
    }

    /** Its sections that cannot bend, each alone and without a wire beside it, from the distal tip. */
    public List<Stretch> rigid(Phase phase) {
        return phase == Phase.IN ? rigidIn : rigidOut;
    }

    /** The inner diameter of one of its lumens, from the proximal entry. */
    public List<Stretch> bore(Lumen lumen) {
        return bores.get(lumen.name());
    }
}
