/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.catalogue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.ferrule.engine.translate.BenchTranslator;
import org.ferrule.engine.translate.DeviceTranslator;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.DeviceResolution;

/**
 * Reads one library again and again while it is edited: a device that has not changed keeps its record, so that the
 * solver can tell. Not safe for use from several threads; the records are.
 */
public final class LibraryReader {
    private final String path;
    private final DeviceLibrary library;
    private final Map<Device, CataloguedDevice> records = new HashMap<>();
    private List<BenchResult> bench;

    /**
     * A reader.
     *
     * @param path by which charts refer to the library
     * @param library may be edited between readings, if {@link #changed} hears of it
     */
    public LibraryReader(String path, DeviceLibrary library) {
        this.path = path;
        this.library = library;
    }

    /** The library itself. */
    public DeviceLibrary library() {
        return library;
    }

    /** The devices, in the order of the library. */
    public List<CataloguedDevice> devices() {
        DeviceTranslator translator = new DeviceTranslator(library);
        return library.getDevices().stream().map(d -> records.computeIfAbsent(d, k -> read(translator, k))).toList();
    }

    /** The bench results. */
    public List<BenchResult> bench() {
        if (bench == null) {
            bench = BenchTranslator.translate(library);
        }
        return bench;
    }

    /** Forgets what a change makes stale. */
    public void changed(Change change) {
        switch (change.scope()) {
            case DEVICE -> records.remove(change.device().orElseThrow());
            case LINE -> records.keySet().removeIf(d -> change.line().orElse("").equals(d.getLine()));
            case BENCH -> bench = null;
            case LIBRARY -> {
                records.clear();
                bench = null;
            }
        }
    }

    private CataloguedDevice read(DeviceTranslator translator, Device device) {
        DeviceParts parts = DeviceResolution.resolve(device).device();
        return new CataloguedDevice(path, translator.translate(device), text(parts.getMaker()), line(device),
                text(parts.getModel()));
    }

    private static String line(Device device) {
        return DeviceResolution.line(device).map(DeviceLine::getName).orElseGet(() -> text(device.getLine()));
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}
