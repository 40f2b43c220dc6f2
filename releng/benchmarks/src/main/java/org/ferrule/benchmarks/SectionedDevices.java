/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Devices and lumens of so many constant sections each, of random diameters: most pass, some are tight, some stop. */
final class SectionedDevices {
    private static final int LUMEN_MM = 1000;
    private static final int DEVICE_MM = 1400;

    private final Random random = new Random(7);

    /** The question about so many lumens and devices. */
    static MatrixQuestion question(int outer, int lumenSections, int inner, int deviceSections) {
        SectionedDevices devices = new SectionedDevices();
        List<Device> lines = new ArrayList<>();
        List<Device> columns = new ArrayList<>();
        for (int i = 0; i < outer; i++) {
            lines.add(devices.outer("o" + i, lumenSections));
        }
        for (int i = 0; i < inner; i++) {
            columns.add(devices.inner("i" + i, deviceSections));
        }
        return UsualQuestion.of(lines, columns, FitSolver.standard(List.of()));
    }

    private Device outer(String id, int count) {
        List<LumenSection> sections = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Optional<Dimension> diameter = Optional.of(diameter(1.15, 0.3));
            sections.add(new LumenSection("bore " + i, at(LUMEN_MM * i / count), at(LUMEN_MM * (i + 1) / count),
                    diameter, diameter, SourceRef.NONE));
        }
        Lumen lumen = new Lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, Length.ZERO, at(LUMEN_MM), sections);
        return device(id, DeviceKind.GUIDE_CATHETER, LUMEN_MM, List.of(), List.of(lumen));
    }

    private Device inner(String id, int count) {
        List<ShaftSection> sections = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            sections.add(ShaftSection.plain("part " + i, at(DEVICE_MM * i / count), at(DEVICE_MM * (i + 1) / count),
                    new Contour.Round(Optional.of(diameter(0.7, 0.5)))));
        }
        return device(id, DeviceKind.MICROCATHETER, DEVICE_MM, sections, List.of());
    }

    private static Device device(String id, DeviceKind kind, int length, List<ShaftSection> sections,
            List<Lumen> lumens) {
        return new Device(id, id, kind, "", Optional.of(Dimension.parse(length + " mm")), Optional.empty(), sections,
                lumens, false, List.of());
    }

    private Dimension diameter(double least, double spread) {
        return Dimension.parse(String.format(Locale.ROOT, "%.3f mm", least + spread * random.nextDouble()));
    }

    private static Length at(int mm) {
        return Length.of(Integer.toString(mm), LengthUnit.MILLIMETRE);
    }
}
