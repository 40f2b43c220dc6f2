/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.engine.translate.Words;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.passage.Direction;
import org.ferrule.model.Axis;
import org.ferrule.quantity.Length;

/** Finds the devices that the axes of a chart speak of, and notes what it does not find. */
final class AxisSelection {
    private final Catalogue catalogue;
    private final List<ChartProblem> problems;

    AxisSelection(Catalogue catalogue, List<ChartProblem> problems) {
        this.catalogue = catalogue;
        this.problems = problems;
    }

    List<AxisEntry> outer(Axis axis, Direction direction) {
        List<AxisEntry> entries = new ArrayList<>();
        for (String reference : references(axis)) {
            addEntry(entries, reference, direction, !axis.getDevices().isEmpty());
        }
        AxisOrder order = new AxisOrder(axis);
        return order.sorted(entries, AxisEntry::device, e -> AxisOrder.lumen(e.lumen()));
    }

    List<CataloguedDevice> inner(Axis axis) {
        List<CataloguedDevice> devices = new ArrayList<>();
        for (String reference : references(axis)) {
            try {
                devices.add(catalogue.device(reference));
            } catch (ReferenceException e) {
                problems.add(new ChartProblem("inner", e.getMessage()));
            }
        }
        return new AxisOrder(axis).sorted(devices, d -> d, d -> Length.ZERO);
    }

    private List<String> references(Axis axis) {
        Set<String> hidden = new HashSet<>(axis.getHidden());
        Set<DeviceKind> kinds = Words.kinds(axis.getKinds());
        List<String> listed = axis.getDevices().isEmpty()
                ? catalogue.devices().stream().filter(d -> kinds.contains(d.device().kind())).map(this::reference)
                        .toList()
                : axis.getDevices();
        return listed.stream().filter(r -> !hidden.contains(r) && !hidden.contains(idOf(r))).toList();
    }

    private String reference(CataloguedDevice device) {
        return device.library() + "!" + device.device().id();
    }

    private static String idOf(String reference) {
        return reference.substring(reference.indexOf('!') + 1);
    }

    private void addEntry(List<AxisEntry> entries, String reference, Direction direction, boolean isListed) {
        LumenReference parts = LumenReference.parse(reference);
        try {
            CataloguedDevice device = catalogue.device(parts.device());
            entries.add(new AxisEntry(device, parts.lumen(device.device(), direction)));
        } catch (ReferenceException e) {
            if (isListed) {
                problems.add(new ChartProblem("outer", e.getMessage()));
            }
        }
    }
}
