/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.OptionalDouble;

/**
 * Where things lie in the drawing of a device by itself, for those who lay something over it or read a place back.
 * Stations count from the distal tip; places are millimetres of paper from the upper left corner.
 */
public final class DeviceLayout {
    private final DeviceScene scene;

    DeviceLayout(DeviceScene scene) {
        this.scene = scene;
    }

    /** Where a station lies; beyond the ends of the device as if it went on. */
    public double x(double stationMm) {
        return scene.axis().beyond(-stationMm);
    }

    /** The station at a place; within a gap what the gap leaves out, beyond the ends as if the device went on. */
    public double stationMm(double x) {
        return -scene.axis().station(x);
    }

    /** How high a diameter is drawn. */
    public double heightMm(double diameterMm) {
        return diameterMm * scene.radial();
    }

    /** The diameter that is drawn so high. */
    public double diameterMm(double heightMm) {
        return heightMm / scene.radial();
    }

    /** Where the middle of the shaft lies. */
    public double centreY() {
        return scene.centreY();
    }

    /** Where the middle of a lumen lies at a station; nothing where it is not drawn there. */
    public OptionalDouble lumenY(String lumen, double stationMm) {
        return scene.lumenY(lumen, -stationMm);
    }

    /** How far the middle of one disc of a composed section lies above that of the shaft, in mm of the device. */
    public OptionalDouble discMm(String section, int disc) {
        return scene.discMm(section, disc);
    }
}
