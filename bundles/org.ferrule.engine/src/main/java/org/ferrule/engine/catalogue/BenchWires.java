/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.quantity.Dimension;

/**
 * Replaces the ids of the wires in bench results by the wires' diameters; an unknown id stays, and cannot be read. A
 * wire with a spring tip or a taper counts with its thinnest part: a pass says nothing of wires that are thicker along
 * their whole length, and a failure speaks of every wire that is not thinner.
 */
final class BenchWires {
    private final Map<String, Device> wires;

    BenchWires(List<CataloguedDevice> devices) {
        this.wires = devices.stream().map(CataloguedDevice::device).filter(d -> d.kind() == DeviceKind.GUIDEWIRE)
                .collect(Collectors.toMap(Device::id, d -> d, (a, b) -> a));
    }

    List<BenchResult> resolve(List<BenchResult> bench) {
        return bench.stream().map(this::resolve).toList();
    }

    private BenchResult resolve(BenchResult result) {
        Optional<Dimension> diameter = result.wire().map(id -> thinnest(id).orElse(id));
        return new BenchResult(result.outer(), result.lumen(), result.inner(), diameter, result.passed(),
                result.covers(), result.samples(), result.source());
    }

    private Optional<Dimension> thinnest(Dimension id) {
        return Optional.ofNullable(wires.get(id.text()))
                .flatMap(wire -> diameters(wire).min(Comparator.comparing(Dimension::label)));
    }

    private static Stream<Dimension> diameters(Device wire) {
        return wire.sections().stream().flatMap(s -> Stream.of(s.distal(), s.proximal()))
                .filter(Contour.Round.class::isInstance).flatMap(c -> ((Contour.Round) c).diameter().stream())
                .filter(Dimension::readable);
    }
}
