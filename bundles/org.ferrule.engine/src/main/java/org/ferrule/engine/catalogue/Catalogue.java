/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.ferrule.fit.device.BenchResult;

/** All devices and bench results that a chart may ask about. Immutable. */
public final class Catalogue {
    private final List<CataloguedDevice> devices;
    private final List<BenchResult> bench;
    private final Map<String, List<CataloguedDevice>> byReference = new HashMap<>();

    /**
     * A catalogue.
     *
     * @param devices in the order of the libraries
     * @param bench results of all libraries
     */
    public Catalogue(List<CataloguedDevice> devices, List<BenchResult> bench) {
        this.devices = List.copyOf(devices);
        this.bench = List.copyOf(bench);
        for (CataloguedDevice device : this.devices) {
            add(device.device().id(), device);
            add(device.library() + "!" + device.device().id(), device);
        }
    }

    private void add(String reference, CataloguedDevice device) {
        byReference.computeIfAbsent(reference, r -> new ArrayList<>(1)).add(device);
    }

    /** Reads the libraries as they are now. */
    public static Catalogue of(List<LibraryReader> libraries) {
        List<CataloguedDevice> devices = new ArrayList<>();
        List<BenchResult> bench = new ArrayList<>();
        for (LibraryReader library : libraries) {
            devices.addAll(library.devices());
            bench.addAll(library.bench());
        }
        return new Catalogue(devices, new BenchWires(devices).resolve(bench));
    }

    public List<CataloguedDevice> devices() {
        return devices;
    }

    public List<BenchResult> bench() {
        return bench;
    }

    /**
     * The device that a reference names: {@code id}, or {@code library!id} where two libraries share an id.
     *
     * @throws ReferenceException when none or several bear it
     */
    public CataloguedDevice device(String reference) {
        List<CataloguedDevice> found = byReference.getOrDefault(reference, List.of());
        if (found.isEmpty()) {
            throw ReferenceException.notFound(reference, devices);
        }
        if (found.size() > 1) {
            throw ReferenceException.ambiguous(reference, found);
        }
        return found.get(0);
    }
}
